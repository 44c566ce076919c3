import { anyCheck, checkQuestion } from '../validity/check-question.ts';
import { useFetched } from './use-fetched.ts';
import type { DefenceProps } from './ValidityPart.tsx';

const load = () => import('../validity/check-words.ts');

/** Checks that failed, near the result that they cast doubt on. Nothing as long as none did. */
export function ChecksCaution({ entries, measurement, shown }: Omit<DefenceProps, 'problems' | 'send'>) {
  const { module } = useFetched(load, anyCheck(entries));
  const failed = module?.failedChecks('shown', checkQuestion(entries, measurement, shown)) ?? [];
  if (failed.length === 0) return null;
  return (
    <ul class="caution checks-failed">
      {failed.map((told) => (
        <li key={told} class="problem">
          {told}
        </li>
      ))}
    </ul>
  );
}
