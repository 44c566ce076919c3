import { useRef } from 'preact/hooks';
import { timeText } from '../../text/time-text.ts';
import { ElsewhereNotice } from './ElsewhereNotice.tsx';
import { isFuture } from './future.ts';
import type { KeptLineProps } from './KeptLine.tsx';
import { lineStrings } from './line-strings.ts';
import type { KeepingState } from './place.ts';
import { keepStrings as strings } from './strings.ts';
import { useKeeping } from './use-keeping.ts';

/** Keeps the sheet, says so, and asks where two tabs have changed the same one. */
export function KeepingPart(props: KeptLineProps) {
  const { keeper, told, problem } = useKeeping(props);
  const line = useRef<HTMLSpanElement>(null);
  // what was pressed is gone afterwards: the focus goes to what came of it
  const after = (): void => line.current?.focus();
  return (
    <div class={keeper === undefined ? 'kept-line needs-script late' : 'kept-line needs-script late woken'}>
      <p class="small">
        {keeper !== undefined && (
          <span class="kept-told" ref={line} tabIndex={-1}>
            {sentence(told)}
          </span>
        )}
        {told.kind === 'unchanged' && keeper !== undefined && (
          <button type="button" class="plain" onClick={() => keeper.keepNow().then(after)}>
            {strings.now}
          </button>
        )}
        <a href={lineStrings.allAt}>{lineStrings.all}</a>
      </p>
      <div role="status">
        {problem !== undefined && <p class="caution">{strings.opening[problem]}</p>}
        {told.kind === 'failed' && (
          <div class="caution">
            <p>{strings.failed[told.problem]}</p>
            <p>
              <button type="button" onClick={() => keeper?.keepNow().then(after)}>
                {strings.again}
              </button>
            </p>
          </div>
        )}
        {told.kind === 'elsewhere' && keeper !== undefined && (
          <ElsewhereNotice told={told} keeper={keeper} send={props.send} after={after} />
        )}
      </div>
    </div>
  );
}

/** What is kept of the sheet, in a sentence. */
function sentence(told: KeepingState): string {
  switch (told.kind) {
    case 'unchanged':
      return strings.unchanged;
    case 'waiting':
      return strings.waiting;
    case 'kept': {
      const { changed } = told.head;
      const when = strings.kept(timeText(changed));
      return isFuture(changed, Date.now()) ? `${when} ${strings.future}` : when;
    }
    case 'failed':
      return strings.notKept;
    case 'elsewhere':
      return told.mine ? strings.notKept : strings.otherwise;
  }
}
