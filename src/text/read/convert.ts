import { levelDbm, levelToPower, powerToLevel, powerW } from '#compute';

/** Turns a number in a typed unit into the kind's own unit; undefined where there is none (the level of no power). */
export type Convert = (value: number) => number | undefined;

/** By a factor. */
export const times =
  (factor: number): Convert =>
  (value) =>
    value * factor;

/** Beyond this a level or a power does not fit a double; no transmitter comes near. */
const LARGEST_DBM = 1000;

/** Level of a power in the given unit. */
export const levelOf =
  (watts: number): Convert =>
  (value) =>
    value * watts > 0 ? powerToLevel(powerW(value * watts)) : undefined;
/** Power of a level in the given unit; undefined where no double holds it. */
export const powerOf =
  (toDbm: (value: number) => number): Convert =>
  (value) =>
    Math.abs(value) > LARGEST_DBM ? undefined : levelToPower(levelDbm(toDbm(value)));

/** Peak-to-peak over RMS of a sine: 2 sqrt 2. */
export const sinePeaks = () => 2 * Math.SQRT2;
