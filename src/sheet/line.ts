import {
  type AntennaReference,
  addGain,
  antennaGainOver,
  eirp,
  erp,
  type GainDb,
  gainDb,
  type LevelDbm,
  levelDbm,
  sumOfGains,
} from '#compute';

/** What a line ends in: an instrument's input behind pads, or an antenna. */
export type LineEnd = 'instrument' | 'antenna';

/** Parts of a line in order, by id. */
export const LINE_PARTS = ['amplifier', 'first', 'coax', 'second'] as const;
export type LinePart = (typeof LINE_PARTS)[number];

/** A line from a transmitter's socket to its end. Losses are positive numbers of dB, as their data sheets state them. */
export interface Line {
  readonly levelDbm: number;
  readonly amplifierDb: number;
  readonly firstDb: number;
  readonly coaxDb: number;
  readonly secondDb: number;
  readonly end: LineEnd;
  readonly antennaDb: number;
  readonly over: AntennaReference;
}

/** One step of the level, from a part's input to its output. */
export interface LineStep {
  readonly id: LinePart;
  readonly gain: GainDb;
  readonly from: LevelDbm;
  readonly to: LevelDbm;
}

/** The gain of a part: negative for what takes away. */
export function partGain(line: Line, id: LinePart): GainDb {
  switch (id) {
    case 'amplifier':
      return gainDb(line.amplifierDb);
    case 'first':
      return gainDb(0 - line.firstDb);
    case 'coax':
      return gainDb(0 - line.coaxDb);
    case 'second':
      return gainDb(0 - line.secondDb);
  }
}

/** Parts that the line has: an antenna is fed without pads, and one may be left out of the sum. */
export const partsOfLine = ({ end }: Pick<Line, 'end'>, without?: LinePart): readonly LinePart[] =>
  LINE_PARTS.filter((id) => id !== without && (end === 'instrument' || id === 'amplifier' || id === 'coax'));

/** The level step by step down the line. */
export function lineSteps(line: Line, without?: LinePart): readonly LineStep[] {
  let from = levelDbm(line.levelDbm);
  return partsOfLine(line, without).map((id) => {
    const gain = partGain(line, id);
    const step = { id, gain, from, to: addGain({ level: from, gain }) };
    from = step.to;
    return step;
  });
}

/** The level at the end of the line: at the instrument's input, or at the antenna's terminals. */
export const levelAtEnd = (line: Line, without?: LinePart): LevelDbm =>
  lineSteps(line, without).at(-1)?.to ?? levelDbm(line.levelDbm);

/** The gains of the line together, from the socket to its end. */
export const lineGain = (line: Line): GainDb => sumOfGains(partsOfLine(line).map((id) => partGain(line, id)));

/** What the antenna radiates, counted from an isotropic radiator and from a half-wave dipole. */
export function radiatedLevels(line: Line): { eirp: LevelDbm; erp: LevelDbm; gainDbi: GainDb } {
  const antenna = { gain: gainDb(line.antennaDb), over: line.over };
  const parts = { level: levelAtEnd(line), feeder: gainDb(0), antenna };
  return { eirp: eirp(parts), erp: erp(parts), gainDbi: antennaGainOver('isotropic', antenna) };
}
