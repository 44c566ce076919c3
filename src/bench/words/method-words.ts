import type { MeterRange, MethodSetup } from '../../sheet/method.ts';
import { fewestDecimals } from '../../text/place.ts';
import { powerText } from '../../text/power-text.ts';
import { percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import { methodStrings as strings } from './method-strings.ts';

/** Nobody sets up a method to more decimals than this. */
const MOST_DECIMALS = 4;

const as = (style: Style, value: number, unit: UnitName): string =>
  quantityText(style, { value, decimals: fewestDecimals(value, MOST_DECIMALS), unit });

/** By which method, and how it was set up, in one sentence. */
export function methodText(style: Style, setup: MethodSetup): string {
  switch (setup.method) {
    case 'padsIntoMeter':
      return strings.padsIntoMeter([strings.shows[setup.shows], ...heldText(style, setup)]);
    case 'oscilloscope':
      return strings.oscilloscope({
        load: as(style, setup.resistance, 'ohm'),
        bandwidths: setup.bandwidthsHz.map((hertz) => as(style, hertz / 1e6, 'MHz')).join(' and '),
        terminated: setup.terminated,
      });
    case 'peakDetector':
      return strings.peakDetector({
        load: as(style, setup.resistance, 'ohm'),
        drop: as(style, setup.diodeDropV, 'V'),
        curve: setup.curveFromDc,
      });
    case 'inLine':
      return strings.inLine({
        forward: rangeText(style, setup.forward),
        reflected: rangeText(style, setup.reflected),
        shows: strings.shows[setup.shows],
      });
    case 'dcSubstitution':
      return strings.dcSubstitution(as(style, setup.resistance, 'ohm'));
  }
}

function heldText(
  style: Style,
  { floor, largest }: Extract<MethodSetup, { method: 'padsIntoMeter' }>,
): string[] {
  if (floor === undefined && largest === undefined) return [];
  return [
    strings.holds({
      ...(floor !== undefined && { floor: as(style, floor, 'dBm') }),
      ...(largest !== undefined && { largest: as(style, largest, 'dBm') }),
    }),
  ];
}

/** Full scale of a meter's range with its limits: `±5 % of 20.0 W full scale`. */
export const rangeText = (style: Style, { fullScale, percentOfFullScale }: MeterRange): string =>
  strings.range({
    percent: percentText(style, {
      percent: percentOfFullScale,
      decimals: fewestDecimals(percentOfFullScale, MOST_DECIMALS),
    }),
    scale: powerText(style, { powerW: fullScale, digits: 3 }),
  });
