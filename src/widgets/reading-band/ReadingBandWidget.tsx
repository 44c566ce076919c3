import { useMemo, useReducer, useState } from 'preact/hooks';
import { bandChainOf } from '../../sheet/chain.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { BandFigure } from '../parts/BandFigure.tsx';
import { bandRows } from '../parts/band-rows.ts';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { pulling } from '../parts/pulling.ts';
import { useResting } from '../parts/use-resting.ts';
import { BuildYourOwn } from './BuildYourOwn.tsx';
import { RungControls } from './RungControls.tsx';
import { Switches } from './Switches.tsx';
import { halfSpanOf, initialState, reduceBand } from './state.ts';
import { strings } from './strings.ts';
import { useBandAddress } from './use-address.ts';
import { useChain } from './use-chain.ts';
import { answersOf, summarise } from './words.ts';

export interface ReadingBandWidgetProps {
  /** The prepared chain, handed in as data so that the page carries one chain and not all. */
  readonly sheet: Sheet;
  /** Which parts beyond the strip are shown to begin with. */
  readonly showLimits?: boolean;
  readonly showCurve?: boolean;
  /** Whether the three answers stand below the figure; not where the page gives them already. */
  readonly answers?: boolean;
  /** Whether the reader may take rungs out and add others. */
  readonly build?: boolean;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * The reading band with everything that can be changed. After using it a reader can say which rung of a chain decides how
 * sure a reading is, and what improving another one would be worth.
 */
export default function ReadingBandWidget({
  sheet,
  showLimits = true,
  showCurve = false,
  answers = true,
  build = false,
  instance,
}: ReadingBandWidgetProps) {
  const prepared = useMemo(() => ({ sheet, showLimits, showCurve }), [sheet, showLimits, showCurve]);
  const [state, send] = useReducer(reduceBand, prepared, initialState);
  const [written] = useState(state);
  const problems = useBandAddress({ state, send, prepared, instance });
  const chain = useChain(state.sheet, state.showCurve);
  const before = useMemo(() => state.before && bandChainOf(state.before), [state.before]);
  const rested = useResting(state, state.held !== undefined);
  const atRest = useMemo(() => bandChainOf(rested.sheet), [rested.sheet]);
  const summary = useMemo(() => summarise(atRest), [atRest]);
  return (
    <figure class="reading-band" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <BandFigure
        rows={bandRows({
          chain,
          before,
          showLimits: state.showLimits,
          showCurve: state.showCurve,
          handles: true,
        })}
        centreDbm={chain.result.estimate}
        halfSpanDb={halfSpanOf(state)}
        name={strings.name}
        description={strings.description(summary)}
        asWritten={state === written}
        {...pulling(send)}
        onPull={(id, expandedDb) => send({ type: 'pull', id, expandedDb })}
      />
      {answers && <PlainAnswers answers={answersOf(chain)} />}
      {useMemo(
        () => (
          <>
            <Switches state={rested} chain={atRest} send={send} />
            <RungControls chain={atRest} send={send} />
            {build && <BuildYourOwn sheet={rested.sheet} send={send} />}
            <p class="no-script-only">{strings.noScript}</p>
            <p class="needs-script">
              <button type="button" onClick={() => send({ type: 'replace', sheet: prepared.sheet })}>
                {strings.reset}
              </button>
            </p>
            <Announcer summary={summary} />
          </>
        ),
        [rested, atRest, build, prepared],
      )}
    </figure>
  );
}
