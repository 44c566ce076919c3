import { type GainDb, gainDb, type LevelDbm, levelDbm } from './quantity.ts';

/** Gain of a half-wave dipole over an isotropic antenna, dB, as the definitions of ERP and EIRP use it (ITU-R). */
const DIPOLE_OVER_ISOTROPIC_DB = 2.15;

/** What an antenna's gain, or a radiated power, is counted from. */
export type AntennaReference = 'isotropic' | 'halfWaveDipole';

/** An antenna gain in dB over its reference antenna: dBi or dBd. */
export interface AntennaGain {
  readonly gain: GainDb;
  readonly over: AntennaReference;
}

/** The antenna gain in dB over another reference antenna; a dipole has 2.15 dBi, or 0 dBd. */
export function antennaGainOver(reference: AntennaReference, { gain, over }: AntennaGain): GainDb {
  if (over === reference) return gain;
  return gainDb(gain + (over === 'halfWaveDipole' ? DIPOLE_OVER_ISOTROPIC_DB : -DIPOLE_OVER_ISOTROPIC_DB));
}

/** What makes up a radiated power: level at the transmitter's socket, feeder (a negative gain), antenna. */
export interface RadiatedParts {
  readonly level: LevelDbm;
  readonly feeder: GainDb;
  readonly antenna: AntennaGain;
}

/** Equivalent isotropically radiated power: level + feeder + gain in dBi. Source: ITU Radio Regulations 1.161. */
export function eirp({ level, feeder, antenna }: RadiatedParts): LevelDbm {
  return levelDbm(level + feeder + antennaGainOver('isotropic', antenna));
}

/** Effective radiated power: level + feeder + gain in dBd. Source: ITU Radio Regulations 1.162. */
export function erp({ level, feeder, antenna }: RadiatedParts): LevelDbm {
  return levelDbm(level + feeder + antennaGainOver('halfWaveDipole', antenna));
}
