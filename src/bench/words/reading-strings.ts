import type { ColumnName, MethodKind } from '../../sheet/method.ts';

interface Sums {
  readonly name: string;
  readonly mean: string;
  readonly scatter: string;
}

/** Words of the readings in record and result. */
export const readingStrings = {
  columns: {
    padsIntoMeter: { readings: 'Reading' },
    oscilloscope: { readings: 'Trace, trough to crest' },
    peakDetector: { readings: 'Detector’s meter' },
    inLine: { readings: 'Forward', reflected: 'Reflected' },
    dcSubstitution: {
      readings: 'Rise with RF',
      riseDc: 'Rise with DC',
      volts: 'DC volts',
      amperes: 'DC amperes',
    },
  } satisfies Readonly<Record<MethodKind, Readonly<Partial<Record<ColumnName, string>>>>> as Readonly<
    Record<MethodKind, Readonly<Partial<Record<ColumnName, string>>>>
  >,
  one: ({ name, value }: { name: string; value: string }): string => `${name} ${value}.`,
  few: ({ name, list, mean, scatter }: Sums & { list: string }): string =>
    `${name} ${list}; mean ${mean}, standard deviation ${scatter}.`,
  many: ({
    name,
    count,
    mean,
    scatter,
    least,
    most,
  }: Sums & { count: number; least: string; most: string }): string =>
    `${name}: ${count} readings from ${least} to ${most}, mean ${mean}, standard deviation ${scatter}.`,
} as const;
