import type { PointEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';

/** Unit of a main reading that was typed without one, as a reader would type it. */
const UNIT: Readonly<Record<MethodKind, string>> = {
  padsIntoMeter: 'dBm',
  oscilloscope: 'Vpp',
  peakDetector: 'V',
  inLine: 'W',
  dcSubstitution: 'K',
};

/** A line that holds one number and nothing else. */
const BARE = /^[ \t]*[-+\u2212]?\d[\d.,']*(e[-+]?\d+)?[ \t]*$/i;

/**
 * The point with the unit of the method behind every reading that has none, where another method is about to be chosen: its unit is
 * another, and a number must not change its meaning unseen.
 */
export function withNamedUnits(point: PointEntries, method: MethodKind): PointEntries {
  const readings = point.readings
    .split('\n')
    .map((line) => (BARE.test(line) ? `${line.trimEnd()} ${UNIT[method]}` : line))
    .join('\n');
  return readings === point.readings ? point : { ...point, readings };
}
