import { addGain, type GainDb, gainDb, type LevelDbm, levelDbm, levelDifference } from '#compute';
import { type Line, levelAtEnd, lineGain, radiatedLevels } from './line.ts';

/** The usual slips on a line. The first three are made on the way back from a reading, the last on the way to an antenna. */
export const LINE_SLIPS = ['forgotten', 'subtracted', 'twice', 'reference'] as const;
export type LineSlip = (typeof LINE_SLIPS)[number];

/** Which end of a line a slip belongs to. */
export const slipEnd = (slip: LineSlip): Line['end'] => (slip === 'reference' ? 'antenna' : 'instrument');

/** What a slip states, what is true, and how far apart they are. */
export interface LineSlipOutcome {
  readonly stated: LevelDbm;
  readonly truth: LevelDbm;
  readonly error: GainDb;
}

/**
 * What a slip makes of a line.
 *
 * - `forgotten`: the reading stated as the transmitter's level, pads and cable not added back.
 * - `subtracted`: their losses taken away from the reading once more.
 * - `twice`: their losses added back twice, as where the instrument already has an offset entered.
 * - `reference`: the number of the antenna's gain counted from the other reference, dBi for dBd or the other way round.
 */
export function lineSlip(slip: LineSlip, line: Line): LineSlipOutcome {
  const { stated, truth } = slip === 'reference' ? otherReference(line) : wayBack(slip, line);
  return { stated, truth, error: levelDifference({ level: stated, reference: truth }) };
}

function wayBack(slip: LineSlip, line: Line): { stated: LevelDbm; truth: LevelDbm } {
  const reading = levelAtEnd(line);
  const loss = 0 - lineGain(line);
  const added = { forgotten: 0, subtracted: -loss, twice: 2 * loss, reference: loss }[slip];
  return { stated: addGain({ level: reading, gain: gainDb(added) }), truth: levelDbm(line.levelDbm) };
}

function otherReference(line: Line): { stated: LevelDbm; truth: LevelDbm } {
  const over = line.over === 'isotropic' ? 'halfWaveDipole' : 'isotropic';
  return { stated: radiatedLevels({ ...line, over }).eirp, truth: radiatedLevels(line).eirp };
}
