import { partStrings } from '../part-strings.ts';
import { anyCheck, checkQuestion } from '../validity/check-question.ts';
import { recordStrings as strings } from '../words/record-strings.ts';
import { useFetched } from './use-fetched.ts';
import type { DefenceProps } from './ValidityPart.tsx';

const load = () => import('../validity/check-words.ts');

/**
 * Checks that failed, near the result that they cast doubt on; spoken when one fails while its field is filled in. Where what they
 * say could not be fetched that is told too: silence would be taken for their being passed.
 */
export function ChecksCaution({ entries, measurement, shown }: Omit<DefenceProps, 'problems' | 'send'>) {
  const { module, failed: isLost, again } = useFetched(load, anyCheck(entries));
  const failed = module?.failedChecks('shown', checkQuestion(entries, measurement, shown)) ?? [];
  return (
    <>
      <div role="status">
        {failed.length > 0 && (
          <ul class="caution checks-failed">
            {failed.map((told) => (
              <li key={told} class="problem">
                {told}
              </li>
            ))}
          </ul>
        )}
        {isLost && <p class="problem">{strings.checks.failed}</p>}
      </div>
      {isLost && (
        <button type="button" class="screen-only" onClick={again}>
          {partStrings.again}
        </button>
      )}
    </>
  );
}
