import { chargesPerSecond, levelDbm, levelToPower, levelToVolts, ohms } from '#compute';

/** Which current is counted: the direct one that heats as much, or, by mistake, the crest of the alternating one. */
export type CountedCurrent = 'heating' | 'crest';

/** A level into a load, how well the level is known, and which current is counted. */
export interface CountedLevel {
  readonly levelDbm: number;
  readonly loadOhm: number;
  /** Half of the band around the level, in dB; 0 claims that it is known exactly. */
  readonly halfDb: number;
  readonly counted: CountedCurrent;
}

/** A number with the ends that the band of the level leaves it. */
export interface Banded {
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

export interface DirectCurrent {
  readonly powerW: Banded;
  /** Direct voltage across the load and direct current through it that heat it as the level does. */
  readonly volts: Banded;
  readonly amperes: Banded;
  /** Elementary charges per second in the current that is counted. */
  readonly charges: Banded;
  /** The power with which a direct current of the counted size would heat the load. */
  readonly countedW: number;
}

/** The club's hidden transmitter at its nominal level, as well as the chain of its meter knows a level (invented). */
export const clubCurrent = (): CountedLevel => ({
  levelDbm: 27,
  loadOhm: 50,
  halfDb: 0.69,
  counted: 'heating',
});

/**
 * The direct current that heats a load as a sine of this level does, and its elementary charges. RF moves no net charge; the
 * direct current that heats alike does.
 * @throws RangeError unless the load is above zero.
 */
export function directCurrent({ levelDbm: level, loadOhm, halfDb, counted }: CountedLevel): DirectCurrent {
  const resistance = ohms(loadOhm);
  const banded = (from: (levelInDbm: number) => number): Banded => ({
    value: from(level),
    lower: from(level - halfDb),
    upper: from(level + halfDb),
  });
  const volts = (at: number): number => levelToVolts({ level: levelDbm(at), resistance });
  const crest = counted === 'crest' ? Math.SQRT2 : 1;
  return {
    powerW: banded((at) => levelToPower(levelDbm(at))),
    volts: banded(volts),
    amperes: banded((at) => volts(at) / loadOhm),
    charges: banded((at) => chargesPerSecond((crest * volts(at)) / loadOhm)),
    countedW: levelToPower(levelDbm(level)) * crest ** 2,
  };
}
