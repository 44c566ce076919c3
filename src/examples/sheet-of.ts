import { type LevelDbm, mean, type Specification } from '#compute';
import { measurementOf } from '../sheet/at-point.ts';
import type { Measurement, StatedLink } from '../sheet/measurement.ts';
import { type Columns, type MethodSetup, NO_READINGS } from '../sheet/method.ts';
import type { Link, Measurand, Sheet } from '../sheet/sheet.ts';

/** A sheet with what all examples share: a carrier into 50 Ω at the socket, and the guard band of one U as the rule. */
export function sheetOf({
  power = 'carrier',
  plane = 'at the transmitter’s socket, into 50 Ω',
  ...of
}: {
  title: string;
  conditions: string;
  reading: LevelDbm;
  specification: Specification;
  links: readonly Link[];
  power?: Measurand['power'];
  plane?: string;
  damageLevelDbm?: LevelDbm;
}): Sheet {
  return {
    version: 1,
    title: of.title,
    measurand: { power, plane, conditions: of.conditions },
    specification: of.specification,
    rule: { kind: 'guardBand', multiplier: 1 },
    readings: [of.reading],
    ...(of.damageLevelDbm !== undefined && { damageLevelDbm: of.damageLevelDbm }),
    links: of.links,
  };
}

/**
 * The measurement by which the bench opens a sheet's chain: by the method's own readings, each link as its document states it
 * (`instead` by the link's id), where the sheet has it in decibels or percent already.
 */
export function benchOf(
  sheet: Sheet,
  {
    setup,
    columns,
    frequencyHz,
    delivery,
    instead = {},
  }: {
    setup: MethodSetup;
    columns: Partial<Columns>;
    frequencyHz?: number;
    delivery?: Measurand['delivery'];
    instead?: Readonly<Record<string, Pick<StatedLink, 'stated' | 'unit'>>>;
  },
): Measurement {
  const plain = measurementOf(sheet);
  const measurand = { ...plain.measurand, ...(delivery !== undefined && { delivery }) };
  return {
    ...plain,
    measurand,
    setup,
    links: plain.links.map((link) => ({ ...link, ...instead[link.id] })),
    points: plain.points.map((point) => ({
      ...point,
      ...(frequencyHz !== undefined && { frequencyHz }),
      columns: { ...NO_READINGS, ...columns },
    })),
  };
}

/** The mean of a sheet's readings, in dBm. */
export const readingOf = ({ readings }: Sheet): number => mean(readings);

/** A number as somebody would state it, to so many decimals. */
export const stated = (value: number, decimals: number): number => Number(value.toFixed(decimals));
