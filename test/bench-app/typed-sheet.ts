import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { type NumberedPoint, type PointResult, pointResult } from '../../src/bench/results/point-result.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import {
  blankLink,
  blankPoint,
  type LinkEntries,
  type PointEntries,
  type SheetEntries,
} from '../../src/sheet/entries.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';

/** What somebody types: a method, what is set up, points about 27 dBm, and links. All values invented. */
export interface Typing {
  readonly method?: SheetEntries['method'];
  readonly sheet?: Partial<SheetEntries>;
  readonly points?: readonly Partial<PointEntries>[];
  readonly links?: readonly Partial<LinkEntries>[];
}

/** Entries as typed, with ids by place. */
export const typedEntries = ({
  method = 'padsIntoMeter',
  sheet = {},
  points = [{ readings: '27 dBm' }],
  links = [],
}: Typing): SheetEntries => ({
  ...blankSheet(method),
  title: 'A transmitter',
  ...sheet,
  points: points.map((point, index) => ({
    ...blankPoint(`point${index + 1}`),
    nominal: '27',
    tolerance: '1.5',
    ...point,
  })),
  links: links.map((link, index) => ({
    ...blankLink(`link${index + 1}`),
    label: `Link ${index + 1}`,
    amount: '0.5',
    ...link,
  })),
});

/** The measurement that they stand for. */
export function typedMeasurement(typing: Typing): Measurement {
  const { measurement, problems } = readMeasurement(typedEntries(typing));
  if (measurement === undefined)
    throw new Error(`typedMeasurement: wish a measurement, got ${JSON.stringify(problems)}`);
  return measurement;
}

/** The results of all its points. */
export const resultsOf = (measurement: Measurement): readonly PointResult[] =>
  measurement.points.map(({ id }) => pointResult(measurement, id));

/** The result of its first point, which must have a number. */
export function firstNumber(typing: Typing): NumberedPoint {
  const [result] = resultsOf(typedMeasurement(typing));
  if (!result?.inRange) throw new Error('firstNumber: wish a point in range, got none');
  return result;
}
