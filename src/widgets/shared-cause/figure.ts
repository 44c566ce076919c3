import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { asIndependent, withCause } from '../../sheet/shared-cause.ts';
import { impedanceOf } from '../../sheet/simultaneous.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type SharedFields, type SharedState, type SharedSubject, sharedSpec, subjectOf } from './spec.ts';

/** Places along the axis at which the band is computed: it bends. */
const STEPS = 20;

/** Half-widths of the strip and of the outline, at each place along the axis, and what the axis is. */
interface Drawn {
  readonly most: number;
  readonly at: number;
  readonly strip: (x: number) => number;
  readonly outline: (x: number) => number;
}

/** The uncertainty of a subject: U for two values in dB (k = 2), u for the results of GUM H.2, as the Guide gives them. */
export function widthOf(subject: SharedSubject): number {
  return subject.kind === 'pair'
    ? withCause(subject.pair).propagation.expanded
    : impedanceOf(subject).standardUncertainty;
}

/** The same with nothing in common. */
export function independentWidthOf(subject: SharedSubject): number {
  return subject.kind === 'pair'
    ? asIndependent(subject.pair).propagation.expanded
    : impedanceOf({ ...subject, counted: 0 }).standardUncertainty;
}

function drawnOf(subject: SharedSubject): Drawn {
  if (subject.kind === 'pair') {
    const at = (sharedDb: number): SharedSubject => ({ kind: 'pair', pair: { ...subject.pair, sharedDb } });
    return {
      most: sharedSpec.fields.shared.max,
      at: subject.pair.sharedDb,
      strip: (x) => widthOf(at(x)),
      outline: (x) => independentWidthOf(at(x)),
    };
  }
  return {
    most: sharedSpec.fields.counted.max,
    at: 100 * subject.counted,
    strip: (x) => widthOf({ ...subject, counted: x / 100 }),
    outline: () => independentWidthOf(subject),
  };
}

const bandOf = (most: number, half: (x: number) => number): readonly BandPoint[] =>
  Array.from({ length: STEPS + 1 }, (_, index) => {
    const x = (most * index) / STEPS;
    return { x, lower: -half(x), upper: half(x) };
  });

const reachOf = (values: SharedState): number => {
  const { most, strip, outline } = drawnOf(subjectOf(values));
  return Math.max(strip(0), strip(most), outline(most));
};

/** The figure's data of a state; the axis stays while a handle is held. */
export function figureOf({ values, held }: FieldsState<SharedFields>): Omit<LineBandProps, 'frame'> {
  const { most, at, strip, outline } = drawnOf(subjectOf(values));
  return {
    domain: { lower: 0, upper: most },
    span: spanFor(reachOf(held ?? values)),
    line: [],
    band: bandOf(most, strip),
    ghost: bandOf(most, outline),
    at: { x: at, y: strip(at) },
  };
}
