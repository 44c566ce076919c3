import { useEffect, useRef } from 'preact/hooks';
import { type RoundState, sumOf } from '../round.ts';
import { strings } from '../strings.ts';
import { MistakeList } from './Mistakes.tsx';

/** What a round came to: a count, and what to read again. */
export function RoundSum({ state, onMore }: { readonly state: RoundState; readonly onMore: () => void }) {
  const { mistakes, ...sum } = sumOf(state);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div>
      <h2 ref={heading} tabIndex={-1} aria-describedby="sum">
        {strings.round.over}
      </h2>
      <p id="sum">{strings.round.sum(sum)}</p>
      {mistakes.length > 0 && (
        <>
          <p>{strings.round.mistakes}:</p>
          <MistakeList ids={mistakes} />
        </>
      )}
      <button type="button" onClick={onMore}>
        {strings.round.more}
      </button>
    </div>
  );
}
