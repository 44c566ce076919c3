import type {
  Caution,
  CautionInstrument,
  CautionLink,
  CautionStatus,
  InputLevel,
  InputVolts,
  PadHeat,
  UpperPowers,
} from './caution.types.ts';
import { dbToPowerRatio, sumOfGains } from './decibel.ts';
import { heatInPad } from './heat.ts';
import { addGain, levelDifference, powerToLevel } from './level.ts';
import { levelToVolts } from './level-voltage.ts';
import {
  type GainDb,
  type LevelDbm,
  levelDbm,
  type PowerW,
  powerW,
  rangeError,
  voltsPeak,
} from './quantity.ts';
import { peakOfRms } from './sine.ts';

/** What lies over a limit by less than this share of it, or this many dB, is rounding and not over. */
const ROUNDING = 1e-9;

function statusOf(value: number, limit: number | undefined): CautionStatus {
  if (limit === undefined) return 'unrated';
  return value - limit > ROUNDING * Math.max(1, Math.abs(limit)) ? 'exceeded' : 'within';
}

/**
 * The upper power that cautions are computed with: the higher of what the specification allows and the estimate plus
 * its expanded uncertainty.
 * @throws RangeError if neither is given.
 */
export function upperLevel({
  specification,
  measured,
}: {
  specification?: LevelDbm;
  measured?: { estimate: LevelDbm; expanded: GainDb };
}): LevelDbm {
  const measuredTop = measured && addGain({ level: measured.estimate, gain: measured.expanded });
  const known = [specification, measuredTop].filter((level) => level !== undefined);
  if (known.length === 0)
    throw rangeError({
      where: 'upperLevel',
      wish: 'specification or measured must be given',
      got: 'neither',
    });
  return levelDbm(Math.max(...known));
}

/** Heat in each link that loses power, in order, with the least attenuation before it. */
function padHeats(links: readonly CautionLink[], mean: PowerW): PadHeat[] {
  let incident = mean;
  const heats: PadHeat[] = [];
  for (const { id, highestGain, lowestGain, rating } of links) {
    if (lowestGain < 0) {
      const heat = heatInPad({ power: incident, gain: lowestGain });
      const status = statusOf(rating?.of === 'input' ? incident : heat, rating?.power);
      heats.push({ code: 'padHeat', id, incident, heat, rating, status });
    }
    incident = powerW(incident * dbToPowerRatio(highestGain));
  }
  return heats;
}

/** What arrives at the input, for the whole chain or without one link: level, peak voltage, reverse voltage. */
function atInput(
  instrument: CautionInstrument,
  { level, without }: { level: LevelDbm; without: string | undefined },
): Caution[] {
  const { damageLevel, largestPeak, resistance, detector } = instrument;
  const margin =
    damageLevel === undefined ? undefined : levelDifference({ level: damageLevel, reference: level });
  const input: InputLevel = {
    code: 'inputLevel',
    without,
    level,
    damageLevel,
    margin,
    status: statusOf(level, damageLevel),
  };
  // By way of decibels: behind a hundred pads the power itself is too small for a double.
  const volts = peakOfRms(levelToVolts({ level, resistance }));
  const peak: InputVolts = {
    code: 'inputPeak',
    without,
    volts,
    largest: largestPeak,
    status: statusOf(volts, largestPeak),
  };
  if (!detector) return [input, peak];
  // The capacitor holds one peak while the other comes round: the diode then sees both.
  const reverse = voltsPeak(2 * volts);
  const largest = detector.largestReverse;
  return [
    input,
    peak,
    { code: 'diodeReverse', without, volts: reverse, largest, status: statusOf(reverse, largest) },
  ];
}

function checked({ mean, peakEnvelope }: UpperPowers): LevelDbm {
  if (peakEnvelope < mean)
    throw rangeError({
      where: 'cautionsOf',
      wish: 'upper.peakEnvelope must not be below upper.mean',
      got: `${peakEnvelope} below ${mean}`,
    });
  return powerToLevel(peakEnvelope);
}

/**
 * What the chain may suffer, as codes with numbers: heat in each pad, then what arrives at the instrument with the whole
 * chain and with each removable link left out. Computed with the upper power and, for all that lies behind a link, its
 * lowest attenuation. Links in order from the transmitter.
 * @throws RangeError if the peak envelope power lies below the mean, or is zero; or if a link's gains are the wrong way round.
 * Source: conservation of energy; P = V^2/R; a peak detector's diode sees twice the peak (common practice).
 */
export function cautionsOf({
  upper,
  links,
  instrument,
}: {
  upper: UpperPowers;
  links: readonly CautionLink[];
  instrument: CautionInstrument;
}): Caution[] {
  const start = checked(upper);
  for (const { id, highestGain, lowestGain } of links)
    if (lowestGain > highestGain)
      throw rangeError({ where: 'cautionsOf', wish: 'lowestGain must not be above highestGain', got: id });
  const arriving = (left: CautionLink | undefined) => {
    const gains = links.filter((link) => link !== left).map((link) => link.highestGain);
    return { without: left?.id, level: addGain({ level: start, gain: sumOfGains(gains) }) };
  };
  const cases = [undefined, ...links.filter((link) => link.removable)].map(arriving);
  return [...padHeats(links, upper.mean), ...cases.flatMap((one) => atInput(instrument, one))];
}

/** The cautions whose limit is exceeded. */
export function exceeded(cautions: readonly Caution[]): Caution[] {
  return cautions.filter((caution) => caution.status === 'exceeded');
}
