import type { BandResult } from '#compute';
import {
  type BandPoint,
  type LineBandProps,
  type LinePoint,
  spanFor,
} from '../../figures/line-band.layout.ts';
import { bareLevel, edgeHz, rollOffDb, type ScopeUse, scopeFound } from '../../sheet/scope.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type ScopeFields, useOf } from './spec.ts';

const HZ_PER_MHZ = 1e6;
/** Places along the axis at which line and band are computed. */
const PLACES = 24;
/** Round ends of the axis along, in MHz. */
const ENDS_MHZ = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200, 300, 500, 750] as const;
/** Room beyond the edge of the method, and beyond the frequency. */
const ROOM = 1.3;
/** Without a band the axis reaches as far as the roll-off at the edge of the method asks for. */
const LEAST_REACH_DB = 0.4;

const endMhz = (use: ScopeUse): number => {
  const reach = Math.max(ROOM * edgeHz(use), 1.1 * use.frequencyHz) / HZ_PER_MHZ;
  return ENDS_MHZ.find((end) => end >= reach) ?? reach;
};

/** Frequencies up to the edge of the method, in Hz. */
const frequencies = (use: ScopeUse): readonly number[] =>
  Array.from({ length: PLACES + 1 }, (_, index) => (edgeHz(use) * index) / PLACES);

interface Seen {
  readonly line: readonly LinePoint[];
  readonly strip: readonly BandPoint[];
  readonly worst: readonly BandPoint[];
}

/** What is shown less what is there, all along: minus the correction that the method makes. */
function seenOf(use: ScopeUse): Seen {
  const places = frequencies(use).map((frequencyHz) => {
    const here = { ...use, frequencyHz };
    return { x: frequencyHz / HZ_PER_MHZ, loss: rollOffDb(here), found: scopeFound(here) };
  });
  const line = places.map(({ x, loss }) => ({ x, y: 0 - loss }));
  const bare = bareLevel(use);
  const bands = places.flatMap(({ x, found }) => (found.inRange ? [{ x, result: found.result }] : []));
  const from = (x: number, { lower, upper }: { lower: number; upper: number }): BandPoint => ({
    x,
    lower: bare - upper,
    upper: bare - lower,
  });
  return {
    line,
    strip: bands.map(({ x, result }) => from(x, result.propagation.interval)),
    worst: bands.map(({ x, result }) => from(x, result.worstCase.interval)),
  };
}

const reachOf = ({ strip, worst }: Seen): number =>
  Math.max(LEAST_REACH_DB, ...[...strip, ...worst].flatMap(({ lower, upper }) => [-lower, upper]));

/** The best estimate of how far the bare reading is off. */
const offOf = (use: ScopeUse, { estimate }: Pick<BandResult, 'estimate'>): number =>
  bareLevel(use) - estimate;

/** The figure's data of a state: what is shown less what is there, over the frequency. */
export function figureOf({ values, held }: FieldsState<ScopeFields>): Omit<LineBandProps, 'frame'> {
  const use = useOf(values);
  const ground = useOf(held ?? values);
  const seen = seenOf(use);
  const found = scopeFound(use);
  return {
    domain: { lower: 0, upper: endMhz(ground) },
    span: spanFor(reachOf(held === undefined ? seen : seenOf(ground))),
    line: seen.line,
    band: seen.strip,
    ghost: seen.worst,
    at: { x: values.frequency, y: found.inRange ? offOf(use, found.result) : undefined },
    edge: edgeHz(use) / HZ_PER_MHZ,
  };
}
