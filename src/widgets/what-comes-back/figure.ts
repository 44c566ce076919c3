import type { BandPoint, LineBandProps, LinePoint } from '../../figures/line-band.layout.ts';
import type { ShareRow } from '../../figures/power-shares.layout.ts';
import {
  type Line,
  linePowers,
  returnLossHere,
  returnLossThere,
  shownReturnLoss,
} from '../../sheet/what-comes-back.ts';
import { powerText } from '../../text/power-text.ts';
import type { Style } from '../../text/style.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type BackFields, backSpec, lineOf } from './spec.ts';
import { strings } from './strings.ts';

/** Losses at which line and band are computed, in steps of this many dB. */
const STEP_DB = 0.25;
/** Round ends of the upright axis. */
const SPANS_DB = [20, 30, 40, 50, 60] as const;

const { max } = backSpec.fields.loss;
const losses = (): readonly number[] =>
  Array.from({ length: max / STEP_DB + 1 }, (_, index) => index * STEP_DB);

/** The axis holds the line at every loss; what the meter may show beyond it is cut off there. */
const spanOf = (line: Line): number => {
  const most = returnLossHere({ ...line, lossDb: max });
  return SPANS_DB.find((span) => span >= most) ?? most;
};

/** What a meter may show at a loss, as return losses. */
function shownAt(line: Line, span: number): BandPoint {
  const { least, most } = shownReturnLoss(line);
  return { x: line.lossDb, lower: least, upper: Math.min(span, most ?? span) };
}

/** The figure's data of a state: return loss at the transmitter over the loss of the line. */
export function figureOf({ values, held }: FieldsState<BackFields>): Omit<LineBandProps, 'frame'> {
  const line = lineOf(values);
  const span = spanOf(lineOf(held ?? values));
  const at = (lossDb: number): LinePoint => ({
    x: lossDb,
    y: Math.min(span, returnLossHere({ ...line, lossDb })),
  });
  const own = returnLossThere(line);
  return {
    domain: { lower: 0, upper: max },
    span,
    upward: true,
    line: losses().map(at),
    band: losses().map((lossDb) => shownAt({ ...line, lossDb }, span)),
    ghost: [0, max].map((x) => ({ x, lower: own, upper: own })),
    at: at(line.lossDb),
  };
}

/** What becomes of the wave at either end. */
export function shareRows(line: Line, style: Style = 'shown'): readonly ShareRow[] {
  const { into, back, taken, heat } = linePowers(line);
  const watts = (powerW: number): string => powerText(style, { powerW, digits: 3 });
  const row = (id: 'start' | 'line', first: number, second: number): ShareRow => ({
    id,
    label: strings.shares[id].whole(watts(first + second)),
    first: { powerW: first, label: strings.shares[id].first(watts(first)) },
    second: { powerW: second, label: strings.shares[id].second(watts(second)) },
  });
  return [row('start', into, back), row('line', taken, heat)];
}
