import {
  dbToPowerRatio,
  directivityRange,
  gainDb,
  type LevelDbm,
  levelDbm,
  levelToPower,
  netPower,
  ohms,
  powerRatioToDb,
  powerW,
  reflectionOfSwr,
  returnLossOfReflection,
  swrOfReflection,
  voltsOfPower,
} from '#compute';

/** What stands between transmitter and line: nothing, or a tuner that makes a match there. */
export const MATCHES = ['none', 'tuner'] as const;
export type Match = (typeof MATCHES)[number];

/** A line with an antenna at its far end, and a directional meter at its near one. */
export interface Line {
  /** Level that the transmitter gives into a matched line. */
  readonly levelDbm: number;
  /** Standing-wave ratio at the antenna, above 1. */
  readonly antennaSwr: number;
  /** Loss of the line when matched, one way, in dB. */
  readonly lossDb: number;
  readonly match: Match;
  /** Directivity of the meter's coupler, in dB. */
  readonly directivityDb: number;
}

/** Powers along the line, in watts. */
export interface LinePowers {
  /** Waves at the transmitter's end, and what goes in. */
  readonly forward: number;
  readonly back: number;
  readonly into: number;
  /** The same at the antenna's end; the last is what the antenna takes. */
  readonly arriving: number;
  readonly turned: number;
  readonly taken: number;
  /** What the line keeps as heat, of both waves. */
  readonly heat: number;
}

/** The club's hidden transmitter on its three metres of thin coax, its antenna badly tuned. Every value is invented. */
export const clubLine = (): Line => ({
  levelDbm: 27,
  antennaSwr: 3,
  lossDb: 0.1,
  match: 'none',
  directivityDb: 25,
});

const LINE_OHM = ohms(50);

/** Magnitude of the reflection at the antenna. */
export const reflectionThere = ({ antennaSwr }: Line): number => reflectionOfSwr(antennaSwr);

/** Magnitude of the reflection as it arrives at the transmitter's end: the line takes its loss of the wave going and coming. */
export const reflectionHere = (line: Line): number =>
  reflectionThere(line) * dbToPowerRatio(gainDb(-line.lossDb));

/** Between which reflections the meter at the transmitter's end may show it: the coupler leaks, in a phase that nobody knows. */
const shown = (line: Line) =>
  directivityRange({ reflection: reflectionHere(line), directivityDb: gainDb(line.directivityDb) });

/** The same as standing-wave ratios; no highest one where all of the wave may seem to come back. */
export function shownSwr(line: Line): { readonly least: number; readonly most: number | undefined } {
  const { lower, upper } = shown(line);
  return { least: swrOfReflection(lower), most: upper < 1 ? swrOfReflection(upper) : undefined };
}

/** The same as return losses; no highest one where nothing may seem to come back. */
export function shownReturnLoss(line: Line): { readonly least: number; readonly most: number | undefined } {
  const { lower, upper } = shown(line);
  return {
    least: returnLossOfReflection(upper),
    most: lower > 0 ? returnLossOfReflection(lower) : undefined,
  };
}

/** Standing-wave ratio at the transmitter's end. */
export const swrHere = (line: Line): number => swrOfReflection(reflectionHere(line));

/** Return loss at either end, in dB. */
export const returnLossThere = (line: Line): number => returnLossOfReflection(reflectionThere(line));
export const returnLossHere = (line: Line): number => returnLossOfReflection(reflectionHere(line));

/**
 * Powers along the line. Without a tuner the forward wave is what the transmitter gives into a match, as of a matched source (a real
 * one may give more or less, or shut down); behind a tuner without loss all that it gives goes into the line, and the forward wave
 * is larger by what was sent back out.
 */
export function linePowers(line: Line): LinePowers {
  const given = levelToPower(levelDbm(line.levelDbm));
  const share = reflectionHere(line) ** 2;
  const forward = line.match === 'tuner' ? given / (1 - share) : given;
  const back = forward * share;
  const into = netPower({ forward: powerW(forward), reflected: powerW(back) });
  const arriving = forward * dbToPowerRatio(gainDb(-line.lossDb));
  const turned = arriving * reflectionThere(line) ** 2;
  const taken = netPower({ forward: powerW(arriving), reflected: powerW(turned) });
  return { forward, back, into, arriving, turned, taken, heat: into - taken };
}

/** What the antenna takes against what the transmitter gives into a match, in dB: zero or less. */
export const reachesDb = (line: Line): number =>
  powerRatioToDb(linePowers(line).taken / levelToPower(levelDbm(line.levelDbm)));

/** Volts RMS where the standing wave is highest, if that is at the transmitter's end, for a level that the transmitter may give. */
export function highestVolts(line: Line, level: LevelDbm): number {
  const { forward } = linePowers({ ...line, levelDbm: level });
  return voltsOfPower({ power: powerW(forward), resistance: LINE_OHM }) * (1 + reflectionHere(line));
}
