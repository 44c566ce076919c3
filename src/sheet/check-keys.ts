/**
 * What is read for the validity checks: level without and with one more known pad, the pad and what may differ; level with the
 * transmitter off and what it may add; levels of several reconnections; minutes and levels since switching on; second and third
 * harmonic relative to the carrier and what they may do.
 */
export const CHECK_KEYS = [
  'stepWithout',
  'stepWith',
  'stepPad',
  'stepAllowed',
  'off',
  'offAllowed',
  'reconnections',
  'reconnectionsAllowed',
  'warmUpMinutes',
  'warmUpLevels',
  'warmUpAllowed',
  'secondHarmonic',
  'thirdHarmonic',
  'harmonicsAllowed',
] as const;
export type CheckKey = (typeof CHECK_KEYS)[number];
