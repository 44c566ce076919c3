import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { neededExpanded, spentOn } from '../../sheet/spend.ts';
import type { FieldsState } from '../parts/fields.ts';
import { fieldOf, type SpendFields, type SpendState, spendingOf, spendSpec } from './spec.ts';

/** Places at which the strip is computed. */
const STEPS = 29;

const ends = ({ link }: SpendState) => spendSpec.fields[fieldOf(link)];

/** The strip of the result at every quality that the chosen link might have. */
function bandOf(state: SpendState): readonly BandPoint[] {
  const { min, max } = ends(state);
  return Array.from({ length: STEPS + 1 }, (_, index) => {
    const x = min + ((max - min) * index) / STEPS;
    const { expanded } = spentOn(spendingOf({ ...state, [fieldOf(state.link)]: x }));
    return { x, lower: -expanded, upper: expanded };
  });
}

/** What else was changed last: the strip before it is drawn where the same link is looked at. */
function ghostOf(values: SpendState, before: SpendState | undefined): readonly BandPoint[] | undefined {
  if (before === undefined || before.link !== values.link) return undefined;
  const own = fieldOf(values.link);
  const others = (Object.keys(spendSpec.fields) as (keyof SpendState)[]).filter(
    (name) => name !== own && name !== 'level',
  );
  return others.some((name) => before[name] !== values[name]) ? bandOf(before) : undefined;
}

/** The figure's data of a state: the result's strip about the reading, over how good one link is made. */
export function figureOf({ values, before, held }: FieldsState<SpendFields>): Omit<LineBandProps, 'frame'> {
  const { min: lower, max: upper } = ends(values);
  const band = bandOf(values);
  const ghost = ghostOf(values, before);
  const steady = held ? bandOf(held) : band;
  const needed = neededExpanded(spendingOf(values));
  const reach = [...steady, ...(ghost ?? [])].map((point) => point.upper);
  return {
    domain: { lower, upper },
    span: spanFor(Math.max(needed, ...reach)),
    line: [lower, upper].map((x) => ({ x, y: 0 })),
    band,
    ghost,
    limit: needed,
    limitNamed: values.link === 'readings' ? 'end' : 'start',
    at: { x: values[fieldOf(values.link)], y: 0 },
  };
}
