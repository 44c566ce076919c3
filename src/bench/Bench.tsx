import { useMemo, useReducer, useState } from 'preact/hooks';
import { useDecimal } from '../widgets/parts/use-decimal.ts';
import { useResting } from '../widgets/parts/use-resting.ts';
import { KeptLine } from './keep/KeptLine.tsx';
import { benchIn, spelledState } from './state/decimal.ts';
import { demonstrationInTurns } from './state/demonstration.ts';
import { isOwn } from './state/own.ts';
import { shownPoint } from './state/state.ts';
import { useBenchAddress } from './use-address.ts';
import { useAnswering } from './use-answering.ts';
import { useResults } from './use-results.ts';
import { useTyped } from './use-typed.ts';
import { AddressPart } from './views/AddressPart.tsx';
import { AsWritten } from './views/AsWritten.tsx';
import { BeginPart } from './views/BeginPart.tsx';
import { EntryForm } from './views/EntryForm.tsx';
import { FetchAgain } from './views/FetchAgain.tsx';
import { LateParts } from './views/LateParts.tsx';
import { SpokenResult } from './views/SpokenResult.tsx';
import { Still } from './views/Still.tsx';
import { useFocusAfter } from './views/use-focus-after.ts';

const RESULT = { class: 'bench-result', 'aria-labelledby': 'result' } as const;

/** What the bench opens with, worked out as the script is read: to wake the page then only takes drawing. */
const opening = await demonstrationInTurns();

/**
 * The bench: a reader's own measurement from reading to verdict. After using it a reader knows what leaves the transmitter,
 * how sure that is, which link matters most, and whether the specification is kept, missed, or out of this measurement's reach.
 * @param version of the site, for what is taken along.
 */
export default function Bench({ version }: { readonly version: string }) {
  const decimal = useDecimal();
  const [state, reduce] = useReducer(benchIn(decimal), opening);
  const held = state.held !== undefined;
  const rested = useResting(state, held);
  const formState = useMemo(() => spelledState(rested, decimal), [rested, decimal]);
  const { act: send, mayWait, again: drawing } = useTyped(reduce);
  const [written] = useState(state.entries);
  const tooLong = useBenchAddress(state.held?.entries ?? state.entries, send);
  const { measurement, entries, problems } = state;
  const changed = entries !== written;
  const { answering, failed, again } = useAnswering(changed);
  const moves = rested !== state;
  const results = useResults({ answering, measurement, pointId: shownPoint(state), moves });
  const stale = problems.length > 0;
  const own = isOwn(state);
  const beginBy = useFocusAfter({ entries, point: state.point }, send);
  const begin = useMemo(() => <BeginPart send={beginBy} />, [beginBy]);
  return (
    <div class="bench">
      <Still moves={moves}>
        <AddressPart problems={state.addressProblems} tooLong={tooLong} />
        <KeptLine state={state} begun={written} send={send} />
        {begin}
        {failed && <FetchAgain again={again} />}
      </Still>
      <AsWritten as="section" stale={changed} attributes={RESULT}>
        {answering && results && (
          <answering.ResultSection state={state} results={results} mayWait={mayWait} send={send} />
        )}
      </AsWritten>
      <Still moves={moves}>
        <EntryForm
          state={formState}
          running={
            answering && results && <answering.RunningWords result={results.shown} own={own} stale={stale} />
          }
          changed={changed}
          mayWait={mayWait}
          drawing={drawing}
          send={send}
        />
        <LateParts
          parts={
            results && {
              entries,
              problems,
              send,
              measurement,
              shown: results.shown,
              own,
              all: results.all,
              version,
            }
          }
          changed={changed}
        />
        <SpokenResult
          answering={answering}
          results={results}
          problems={problems.length}
          own={own}
          mayWait={mayWait}
        />
      </Still>
    </div>
  );
}
