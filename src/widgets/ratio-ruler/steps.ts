import { dbToPowerRatio, type GainDb, gainDb, powerRatioToDb } from '#compute';

/** A ratio of powers taken apart for the head: so many tens, so many twos, and what is left. */
export interface Steps {
  /** Steps of 10 dB, each a factor of ten; negative: divided by. */
  readonly tens: number;
  /** Steps of 3 dB, each about a factor of two. */
  readonly twos: number;
  /** What is left beyond whole decibels, from -0.5 to 0.5 dB. */
  readonly restDb: number;
  /** The ratio that the head arrives at. */
  readonly headRatio: number;
  /** The ratio that it is. */
  readonly exactRatio: number;
  /** How far the head's answer is off, in dB; positive where it is too large. */
  readonly offDb: GainDb;
}

/** Common practice: 3 dB is taken for a factor of two. */
export const DB_OF_TWO = 3;
export const DB_OF_TEN = 10;
/** Common practice: a tenth of a decibel is taken for 2.3 % of power, from ln 10 / 100. */
const SHARE_PER_DB = 0.23;
/** Beyond this many steps of one kind nothing shorter can be found: ten steps of 3 dB are three of 10. */
const MOST_TWOS = 9;

/**
 * How to say a number of decibels with tens and twos alone, in as few steps as there are: 26 dB is 10 + 10 + 3 + 3,
 * 7 dB is 10 - 3. Every whole number of decibels has such steps. What is left beyond whole decibels counts as 2.3 % a tenth.
 * @throws RangeError unless gain is finite.
 */
export function stepsOf(gain: GainDb): Steps {
  const whole = Math.sign(gain) * Math.round(Math.abs(gain));
  const restDb = gain - whole;
  const { tens, twos } = fewest(whole);
  const headRatio = 10 ** tens * 2 ** twos * (1 + SHARE_PER_DB * restDb);
  const exactRatio = dbToPowerRatio(gain);
  return { tens, twos, restDb, headRatio, exactRatio, offDb: gainDb(powerRatioToDb(headRatio) - gain) };
}

/** The fewest tens and twos that make a whole number of decibels. */
function fewest(whole: number): { tens: number; twos: number } {
  let best = { tens: 0, twos: 0, count: Number.POSITIVE_INFINITY };
  for (let twos = -MOST_TWOS; twos <= MOST_TWOS; twos++) {
    const tens = (whole - DB_OF_TWO * twos) / DB_OF_TEN;
    const count = Math.abs(tens) + Math.abs(twos);
    if (Number.isInteger(tens) && count < best.count) best = { tens, twos, count };
  }
  // The sum turns a negative zero, which would show as a step that is none, into zero.
  return { tens: best.tens + 0, twos: best.twos + 0 };
}
