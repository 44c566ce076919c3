import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { certificate, errorDb, knownTo, type MeterUse } from '../../sheet/own-meter.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type MeterFields, meterSpec, useOf } from './spec.ts';

/** Levels between two neighbours of the table at which the band is computed: its uncertainty steps where the table's does. */
const STEP_DB = 0.5;

function levels(): readonly number[] {
  const { min, max } = meterSpec.fields.reading;
  return Array.from({ length: Math.round((max - min) / STEP_DB) + 1 }, (_, index) => min + index * STEP_DB);
}

/** Where the error may lie, level by level; nothing where nobody can say. */
const bandOf = (use: MeterUse): readonly BandPoint[] =>
  levels().flatMap((readingDbm) => {
    const here = { ...use, readingDbm };
    const found = knownTo(here);
    if (found === undefined) return [];
    const { expanded } = found.propagation;
    return [{ x: readingDbm, lower: errorDb(here) - expanded, upper: errorDb(here) + expanded }];
  });

/** The limit is a promise about what the meter shows, not about a corrected result. */
const limitOf = ({ treatment, permissibleDb }: MeterUse): number | undefined =>
  treatment === 'corrected' ? undefined : permissibleDb;

const farthest = (use: MeterUse): number =>
  Math.max(
    limitOf(use) ?? 0,
    ...bandOf(use).flatMap(({ lower, upper }) => [Math.abs(lower), Math.abs(upper)]),
    ...certificate().map(({ at, expanded }) => Math.abs(errorDb({ ...use, readingDbm: at })) + expanded),
  );

/** The figure's data of a state: the error of what is written down, over what the meter shows. */
export function figureOf({ values, held }: FieldsState<MeterFields>): Omit<LineBandProps, 'frame'> {
  const use = useOf(values);
  const { min: lower, max: upper } = meterSpec.fields.reading;
  const at = (readingDbm: number) => ({ x: readingDbm, y: errorDb({ ...use, readingDbm }) });
  return {
    domain: { lower, upper },
    span: spanFor(farthest(useOf(held ?? values))),
    line: certificate().map((point) => at(point.at)),
    band: bandOf(use),
    ghost: use.months > 0 ? bandOf({ ...use, months: 0 }) : undefined,
    points:
      use.treatment === 'adjusted'
        ? []
        : certificate().map((point) => ({ ...at(point.at), half: point.expanded })),
    limit: limitOf(use),
    at: at(use.readingDbm),
  };
}
