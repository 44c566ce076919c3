import { useMemo, useReducer } from 'preact/hooks';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { useAddress } from '../parts/use-address.ts';
import { LineFigure } from './LineFigure.tsx';
import { lineSpec } from './spec.ts';
import { preparedLine, reduceLine } from './state.ts';
import { strings } from './strings.ts';
import { TileTable } from './TileTable.tsx';
import { answersOf, summarise } from './words.ts';

export interface LevelLineProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A line of levels and gains that the reader arranges. After using it a reader can answer: is this sum of dBm and dB a level,
 * a ratio or nothing, and why?
 */
export default function LevelLine({ instance }: LevelLineProps) {
  const [state, send] = useReducer(reduceLine, undefined, preparedLine);
  const carried = useMemo(
    () =>
      state.touched && !state.held
        ? { tiles: state.tiles.map(({ kind, value }) => ({ kind, value })) }
        : undefined,
    [state],
  );
  const problems = useAddress({
    spec: lineSpec,
    instance,
    state: carried,
    open: ({ tiles }) => send({ type: 'open', tiles }),
  });
  return (
    <figure class="ruler-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <LineFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(state.tiles)} />
      <TileTable state={state} send={send} />
      <p class="no-script-only">{strings.noScript}</p>
      <Announcer summary={summarise(state.tiles)} />
    </figure>
  );
}
