import type { PointTextKey, SpecificationForm } from '../../sheet/entries.ts';
import type { ColumnName, MethodKind } from '../../sheet/method.ts';
import type { KindName } from '../../text/read/kind.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { LEVEL } from './spec.ts';

const APART = { kind: 'halfWidthDb', min: -60, max: 60, decimals: 0 } as const;

/** What may be typed into a point's number fields other than its columns. */
export const POINT_SPECS = {
  frequency: { kind: 'megahertz', min: 0.0001, max: 1e6, decimals: 4 },
  nominal: LEVEL,
  tolerance: { kind: 'halfWidthDb', min: 0.01, max: 60, decimals: 2 },
  above: APART,
  below: APART,
  lowest: LEVEL,
  highest: LEVEL,
} as const satisfies Partial<Record<PointTextKey, ReadSpec>>;

export type PointSpecKey = keyof typeof POINT_SPECS;

/** Which texts a form of specification needs, in the order in which they are typed. */
export const SPECIFICATION_KEYS: Readonly<
  Record<SpecificationForm, readonly Exclude<PointSpecKey, 'frequency'>[]>
> = {
  around: ['nominal', 'tolerance'],
  uneven: ['nominal', 'above', 'below'],
  between: ['lowest', 'highest', 'nominal'],
  atMost: ['highest'],
  atLeast: ['lowest'],
  licence: ['highest'],
};

/** Texts that a form of specification shows and can do without. */
export const MAY_BE_EMPTY: Readonly<Partial<Record<SpecificationForm, readonly PointSpecKey[]>>> = {
  between: ['nominal'],
};

const positive = (kind: KindName, max: number): ReadSpec => ({ kind, min: 1e-6, max, decimals: 6 });

/** What may be typed into a column of readings, by the method. */
export function columnSpec(method: MethodKind, column: ColumnName): ReadSpec {
  switch (column) {
    case 'reflected':
      return { kind: 'power', min: 0, max: 100_000, decimals: 0 };
    case 'riseDc':
      return positive('rise', 1000);
    case 'volts':
      return positive('voltsDc', 10_000);
    case 'amperes':
      return positive('amperes', 1000);
    case 'readings':
      return mainSpec(method);
  }
}

function mainSpec(method: MethodKind): ReadSpec {
  switch (method) {
    case 'padsIntoMeter':
      return LEVEL;
    case 'oscilloscope':
      return positive('voltsPeakToPeak', 10_000);
    case 'peakDetector':
      return positive('voltsDc', 10_000);
    case 'inLine':
      return positive('power', 100_000);
    case 'dcSubstitution':
      return positive('rise', 1000);
  }
}
