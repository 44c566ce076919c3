import { blankRecord } from '../sheet/blank-sheet.ts';
import type { Measurement } from '../sheet/measurement.ts';
import { type Columns, type MethodSetup, NO_READINGS } from '../sheet/method.ts';
import type { Measurand } from '../sheet/sheet.ts';

/**
 * The measurement by which the bench opens a sum that is no chain: what was read, and of the links only what the example states. Where
 * it states no uncertainty, none stands on the bench either: to be filled in by whoever has one.
 */
export function measuredBy({
  title,
  measurand,
  setup,
  columns,
  frequencyHz,
  specification,
  links = [],
}: {
  title: string;
  measurand: Measurand;
  setup: MethodSetup;
  columns: Partial<Columns>;
  frequencyHz?: number;
  specification: Measurement['points'][number]['specification'];
  links?: Measurement['links'];
}): Measurement {
  return {
    version: 2,
    title,
    measurand,
    setup,
    rule: { kind: 'guardBand', multiplier: 1 },
    links,
    points: [
      {
        id: 'point1',
        label: '',
        specification,
        ...(frequencyHz !== undefined && { frequencyHz }),
        columns: { ...NO_READINGS, ...columns },
      },
    ],
    record: blankRecord(),
  };
}
