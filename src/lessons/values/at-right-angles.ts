import { defaultState } from '../../address/field-spec.ts';
import { wholeRowOf } from '../../sheet/evaluated-pads.ts';
import {
  dominantOf,
  type PadsInARow,
  rootOfStated,
  rowResult,
  sumOfStated,
} from '../../sheet/pads-in-a-row.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import { rowOf, rowSpec } from '../../widgets/pads-in-a-row/spec.ts';
import { shareText } from '../../widgets/pads-in-a-row/words.ts';

/** What somebody halves who wants to do better: the receiver, or all of the pads. */
const HALF = 0.5;

/** Numbers of the lesson on right angles, all from the row with the rough receiver. */
export function anglesValues(): Readonly<Record<string, () => string>> {
  const row = rowOf(defaultState(rowSpec('angles').fields));
  const u = (of: PadsInARow): number => rowResult(of).propagation.standardUncertainty;
  const alike: PadsInARow = { ...row, meterDb: row.padDb };
  const uShaped: PadsInARow = { ...row, count: 2, between: 'arcsine', meterDb: 0 };
  const middle: PadsInARow = { ...row, between: 'triangular', meterDb: 0 };
  const oneLarge: PadsInARow = { ...row, count: 2, padDb: 0.05, meterDb: 2 };
  const endToEnd = rowResult(row).propagation.budget.reduce((sum, part) => sum + part.standardUncertainty, 0);
  const pads = rowResult(row).propagation.budget.slice(0, row.count);
  return {
    pad: () => band(row.padDb),
    meter: () => band(row.meterDb),
    padU: () => size(pads[0]?.standardUncertainty ?? Number.NaN),
    meterU: () => size(u({ ...row, count: 0 })),
    u: () => size(u(row)),
    endToEnd: () => size(endToEnd),
    meterShare: () => shareText('shown', dominantOf(row).share),
    padsShare: () => percent(100 * pads.reduce((sum, { share }) => sum + share, 0)),
    perfectPads: () => size(u({ ...row, count: 0 })),
    perfectPadsGain: () => percent(100 * (1 - u({ ...row, count: 0 }) / u(row))),
    halfPads: () => size(u({ ...row, padDb: HALF * row.padDb })),
    halfMeter: () => size(u({ ...row, meterDb: HALF * row.meterDb })),
    halfMeterGain: () => percent(100 * (1 - u({ ...row, meterDb: HALF * row.meterDb }) / u(row))),
    root: () => band(rootOfStated(row)),
    rootFactor: () => factor(rootOfStated(row) / u(row)),
    rootFactorWave: () => factor(rootOfStated(uShaped) / u(uShaped)),
    rootFactorMiddle: () => factor(rootOfStated(middle) / u(middle)),
    holds: () => shareText('shown', wholeRowOf(row).withinRoot),
    holdsAlike: () => shareText('shown', wholeRowOf(alike).withinRoot),
    holdsWave: () => shareText('shown', wholeRowOf(uShaped).withinRoot),
    holdsMiddle: () => shareText('shown', wholeRowOf(middle).withinRoot),
    holdsLarge: () => shareText('shown', wholeRowOf(oneLarge).withinRoot),
    holdsExpanded: () => shareText('shown', wholeRowOf(alike).withinExpanded),
    calledU: () =>
      `${band(rootOfStated(alike))} where 2u is ${band(2 * u(alike))}; it holds ${shareText('shown', wholeRowOf(alike).withinRoot)} of the rows`,
    calledLimit: () =>
      `${band(rootOfStated(uShaped))} is passed by ${shareText('shown', 1 - wholeRowOf(uShaped).withinRoot)} of the rows, and the limits reach ${band(sumOfStated(uShaped))}`,
    padsFirst: () =>
      `u goes from ${size(u(row))} to ${size(u({ ...row, padDb: HALF * row.padDb }))}; the receiver halved would give ${size(u({ ...row, meterDb: HALF * row.meterDb }))}`,
  };
}

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const factor = (value: number): string => numberText('shown', { value, decimals: 2 });
const size = (db: number): string => dbText('shown', { db, decimals: decimalsFor(db) });
const percent = (value: number): string => percentText('shown', { percent: value, decimals: 0 });
