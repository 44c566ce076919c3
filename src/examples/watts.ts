import { levelDbm, levelToPower, type PowerW } from '#compute';

/** The power of a level in dBm that came out of a sum, in watts. */
export const wattsOfLevel = (dbm: number): PowerW => levelToPower(levelDbm(dbm));
