import { CHECK_KEYS, type CheckKey } from './check-keys.ts';
import { blankPoint, type RecordEntries, type SetupEntries, type SheetEntries } from './entries.ts';
import type { MethodKind } from './method.ts';

/** What a method asks for once, before anybody has said anything: an ordinary load of 50 ohm. */
export const blankSetup = (method: MethodKind): SetupEntries => ({
  method,
  shows: 'mean',
  load: '50',
  scopeBandwidth: '',
  probeBandwidth: '',
  terminated: 'yes',
  drop: '',
  curve: 'no',
  forwardScale: '',
  forwardPercent: '',
  reflectedScale: '',
  reflectedPercent: '',
  floor: '',
  largest: '',
  damage: '',
  largestPeak: '',
  largestReverse: '',
});

/** A record in which nothing has been written yet. */
export const blankRecord = (): RecordEntries => ({
  by: '',
  date: '',
  instruments: '',
  certificates: '',
  supply: '',
  temperature: '',
  remarks: '',
});

/** Checks that nobody has made yet. */
export const blankChecks = (): Readonly<Record<CheckKey, string>> =>
  // Every key gets its text; Object.fromEntries forgets which keys they were.
  Object.fromEntries(CHECK_KEYS.map((key) => [key, ''])) as Record<CheckKey, string>;

/** A sheet that nobody has said anything about yet: one point and no links. */
export const blankSheet = (method: MethodKind): SheetEntries => ({
  ...blankSetup(method),
  ...blankRecord(),
  title: '',
  power: 'carrier',
  delivery: 'intoIdeal',
  keying: 'keyDown',
  plane: '',
  conditions: '',
  rule: 'guardBand',
  multiplier: '1',
  required: '95',
  scatter: '',
  repeats: '',
  points: [blankPoint('point1')],
  links: [],
  log: { lockedAt: '', changes: [] },
  checks: blankChecks(),
});
