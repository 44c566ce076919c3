import type { ColumnName } from './method.ts';
import type { TypedKey } from './typed-key.ts';

/**
 * How a reader states the specification: around a nominal level, evenly or not; between two limits; with one limit; or as the
 * maximum of a licence, which has words of its own.
 */
export const SPECIFICATION_FORMS = ['around', 'uneven', 'between', 'atMost', 'atLeast', 'licence'] as const;
export type SpecificationForm = (typeof SPECIFICATION_FORMS)[number];

/** One point as it stands in the form. Columns that the method does not ask for keep what was typed, too. */
export interface PointEntries extends Readonly<Record<ColumnName, string>> {
  /** Unique within the sheet; never typed. */
  readonly id: string;
  readonly label: string;
  readonly frequency: string;
  readonly specification: SpecificationForm;
  readonly nominal: string;
  readonly tolerance: string;
  /** Limits above and below the nominal level where they differ, in dB. */
  readonly above: string;
  readonly below: string;
  readonly lowest: string;
  readonly highest: string;
}

/** Keys of a point whose value is free text or a number as typed. */
export type PointTextKey = TypedKey<PointEntries, 'id' | 'specification'>;

/** A point that nobody has said anything about yet. */
export const blankPoint = (id: string): PointEntries => ({
  id,
  label: '',
  frequency: '',
  specification: 'around',
  nominal: '',
  tolerance: '',
  above: '',
  below: '',
  lowest: '',
  highest: '',
  readings: '',
  reflected: '',
  riseDc: '',
  volts: '',
  amperes: '',
});
