import type { BenchAction } from '../state/actions.ts';
import type { Choices } from './keeper.ts';
import type { KeepingState } from './place.ts';
import { keepStrings as strings } from './strings.ts';

interface ElsewhereNoticeProps {
  readonly told: Extract<KeepingState, { kind: 'elsewhere' }>;
  readonly keeper: Choices;
  readonly send: (action: BenchAction) => void;
  /** Once the reader has chosen. */
  readonly after: () => void;
}

/** Tells that somebody else has changed the sheet, and lets the reader choose: nothing is overwritten before. */
export function ElsewhereNotice({ told, keeper, send, after }: ElsewhereNoticeProps) {
  const { problem, mine } = told;
  const take = async (): Promise<void> => {
    const entries = await keeper.takeKept();
    if (entries !== undefined) send({ type: 'adopt', entries });
    after();
  };
  return (
    <div class="caution kept-elsewhere">
      <p>
        <strong>{strings.elsewhere[problem]}</strong> {mine ? strings.mine : strings.notMine}
      </p>
      <p class="kept-choices">
        {problem === 'changed' && (
          <button type="button" onClick={take}>
            {strings.choices.take}
          </button>
        )}
        <button type="button" onClick={() => keeper.keepBeside().then(after)}>
          {strings.choices.beside}
        </button>
        {problem === 'changed' && (
          <button type="button" onClick={() => keeper.keepInstead().then(after)}>
            {strings.choices.instead}
          </button>
        )}
      </p>
      {problem === 'changed' && <p class="small">{strings.takeNote}</p>}
    </div>
  );
}
