import {
  type Caution,
  type CautionLink,
  cautionsOf,
  gainDb,
  levelDbm,
  levelToPower,
  ohms,
  type PowerRating,
  powerW,
} from '#compute';
import { type Line, type LinePart, partGain, partsOfLine } from './line.ts';

/** How far the transmitter's specification lets it be above its nominal level, in dB. Invented, as the club's sheet has it. */
export const ABOVE_NOMINAL_DB = 1.5;

/** How far each part may be off what is stated, in dB; invented. */
const TOLERANCE_DB: Readonly<Record<LinePart, number>> = {
  amplifier: 0,
  first: 0.5,
  coax: 0.05,
  second: 0.5,
};

/** What may go into each pad for as long as one likes, in watts; invented: a ready-made pad, and one of quarter-watt resistors. */
const RATED_INPUT_W: Readonly<Partial<Record<LinePart, number>>> = { first: 1, second: 0.25 };

const INPUT_OHM = 50;

/** The rating of a part, where it has one. */
export function ratingOf(id: LinePart): PowerRating | undefined {
  const power = RATED_INPUT_W[id];
  return power === undefined ? undefined : { power: powerW(power), of: 'input' };
}

function cautionLink(line: Line, id: LinePart): CautionLink {
  const gain = partGain(line, id);
  const rating = ratingOf(id);
  // 0 dB is a part that is not there: nothing of it can be off, or get warm.
  const tolerance = gain === 0 ? 0 : TOLERANCE_DB[id];
  const highest = gain + tolerance;
  return {
    id,
    // A part that takes away gives nothing, whatever its tolerance.
    highestGain: gainDb(id === 'amplifier' ? highest : Math.min(0, highest)),
    lowestGain: gainDb(gain - tolerance),
    removable: id !== 'amplifier',
    ...(rating && { rating }),
  };
}

/**
 * What the parts of a line and the instrument behind it may suffer: with the upper power of the transmitter and, for all that
 * lies behind a part, its lowest attenuation. With `without`, the same for a line that lacks that part: a calculation.
 */
export function lineCautions({
  line,
  damageDbm,
  without,
}: {
  line: Line;
  damageDbm: number;
  without?: LinePart | undefined;
}): readonly Caution[] {
  const power = levelToPower(levelDbm(line.levelDbm + ABOVE_NOMINAL_DB));
  return cautionsOf({
    upper: { mean: power, peakEnvelope: power },
    links: partsOfLine(line, without).map((id) => cautionLink(line, id)),
    instrument: { resistance: ohms(INPUT_OHM), damageLevel: levelDbm(damageDbm) },
  });
}
