import { type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { type JoinedOutcome, type Joining, joinedOf, mostFrequency } from '../../sheet/joined.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type Along, alongOf, type JoinedFields, type JoinedState, joinedSpec, joiningOf } from './spec.ts';

/** Places along the axis at which line and band are computed: they bend. */
const STEPS = 40;
/** The least span, in either unit: a meter that changes nothing is not magnified. */
const LEAST_REACH = { percent: 1, dB: 0.4 } as const;

const KEYS = {
  source: 'sourceKohm',
  kilohertz: 'kilohertz',
  megahertz: 'megahertz',
} as const satisfies Record<Along, keyof Joining>;

type InRange = Extract<JoinedOutcome, { inRange: true }>;

/** What is shown less what was there, along the axis as far as the meter can be used. */
function placesOf(joining: Joining): readonly (InRange & { readonly x: number })[] {
  const along = alongOf(joining.meter);
  const { min, max } = joinedSpec.fields[along];
  const end = Math.min(max, mostFrequency(joining.meter));
  return Array.from({ length: STEPS + 1 }, (_, index) => {
    const x = index === STEPS ? end : min + ((end - min) * index) / STEPS;
    const found = joinedOf({ ...joining, [KEYS[along]]: x });
    return found.inRange ? [{ ...found, x }] : [];
  }).flat();
}

function spanOf(values: JoinedState): number {
  const places = placesOf(joiningOf(values));
  const unit = places[0]?.unit ?? 'percent';
  return spanFor(
    Math.max(LEAST_REACH[unit], ...places.flatMap(({ lower, upper }) => [Math.abs(lower), Math.abs(upper)])),
  );
}

/** The figure's data of a state. Out of range the line has ended before the knob, which then stands on the axis alone. */
export function figureOf({ values, held }: FieldsState<JoinedFields>): Omit<LineBandProps, 'frame'> {
  const joining = joiningOf(values);
  const along = alongOf(joining.meter);
  const { max } = joinedSpec.fields[along];
  const places = placesOf(joining);
  const span = spanOf(held ?? values);
  const found = joinedOf(joining);
  return {
    domain: { lower: 0, upper: max },
    span,
    line: places.map(({ x, error }) => ({ x, y: error })),
    band: places.map(({ x, lower, upper }) => ({ x, lower, upper })),
    at: { x: joining[KEYS[along]], y: found.inRange ? found.error : -span },
  };
}
