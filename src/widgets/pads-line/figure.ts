import { mismatchLimits } from '#compute';
import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { magnitudesOf, matchOf, type PadsLine } from '../../sheet/pads-line.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type PadsFields, padsLineOf, padsSpec } from './spec.ts';

const { min, max } = padsSpec.fields.pad;

/** Every pad of whole decibels, from none at all. */
const pads = (): readonly number[] => Array.from({ length: max - min + 1 }, (_, index) => min + index);

const limitsAlong = (line: PadsLine, pad: 'real' | 'perfect'): readonly BandPoint[] =>
  pads().map((padDb) => {
    const { lower, upper } = mismatchLimits(magnitudesOf({ ...line, padDb }, pad));
    return { x: padDb, lower, upper };
  });

const farthest = (line: PadsLine): number =>
  Math.max(...limitsAlong(line, 'real').map(({ lower, upper }) => Math.max(-lower, upper)));

/** The figure's data of a state: limits and standard uncertainty of the mismatch over the pad, and those of a perfect pad. */
export function figureOf({ values, held }: FieldsState<PadsFields>): Omit<LineBandProps, 'frame'> {
  const line = padsLineOf(values);
  const at = (padDb: number) => ({ x: padDb, y: matchOf({ ...line, padDb }).standardUncertainty });
  return {
    domain: { lower: min, upper: max },
    span: spanFor(farthest(padsLineOf(held ?? values))),
    line: pads().map(at),
    band: limitsAlong(line, 'real'),
    ghost: limitsAlong(line, 'perfect'),
    at: at(line.padDb),
  };
}
