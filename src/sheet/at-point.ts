import { rangeError } from '#compute';
import { blankRecord } from './blank-sheet.ts';
import { readingLevels } from './levels.ts';
import type { Measurement, Point } from './measurement.ts';
import { type MethodReading, NO_READINGS } from './method.ts';
import { resolvedLink } from './resolve-link.ts';
import type { Sheet } from './sheet.ts';

/**
 * The sheet of one point of a measurement: links as they are at its reading, those switched off left out.
 * @throws RangeError for a point that the measurement has not, or for readings that no level exists of.
 */
export function sheetAt(measurement: Measurement, pointId: string): Sheet {
  const point = measurement.points.find(({ id }) => id === pointId);
  if (point === undefined)
    throw rangeError({ where: 'sheetAt', wish: 'point must be one of the measurement', got: pointId });
  const method = readingAt(measurement, point);
  const { title, measurand, rule, repeatability, damageLevelDbm } = measurement;
  const delivery = measurand.delivery ?? 'intoIdeal';
  return {
    version: 1,
    title: measurement.points.length > 1 ? `${title}, ${point.label}` : title,
    measurand,
    specification: point.specification,
    rule,
    readings: readingLevels(method, delivery),
    method,
    ...(repeatability && { repeatability }),
    ...(damageLevelDbm !== undefined && { damageLevelDbm }),
    links: measurement.links.filter(({ off }) => !off).map((link) => resolvedLink(link, method, delivery)),
  };
}

const readingAt = ({ setup }: Measurement, { columns, frequencyHz }: Point): MethodReading => ({
  setup,
  columns,
  ...(frequencyHz !== undefined && { frequencyHz }),
});

/** A measurement of one point from a sheet of pads and cable into a meter. @throws RangeError for a sheet by another method. */
export function measurementOf(sheet: Sheet): Measurement {
  const { measurand, rule, repeatability, damageLevelDbm, readings, specification } = sheet;
  if (sheet.method !== undefined && sheet.method.setup.method !== 'padsIntoMeter')
    throw rangeError({
      where: 'measurementOf',
      wish: 'sheet must be by pads into a meter',
      got: sheet.method.setup.method,
    });
  return {
    version: 2,
    title: sheet.title,
    measurand,
    setup: sheet.method?.setup ?? { method: 'padsIntoMeter', shows: 'mean' },
    rule,
    ...(repeatability && { repeatability }),
    ...(damageLevelDbm !== undefined && { damageLevelDbm }),
    links: sheet.links.map(({ statement, reflections: _, ...link }) => ({ ...link, stated: statement })),
    points: [
      {
        id: 'point1',
        label: '',
        specification,
        columns: { ...NO_READINGS, readings },
      },
    ],
    record: blankRecord(),
  };
}
