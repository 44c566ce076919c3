import type { AntennaReference } from '#compute';
import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Line, LineEnd, LinePart } from '../../sheet/line.ts';
import type { LineSlip } from '../../sheet/line-slips.ts';

/** The part that the sum leaves out, or none; an amplifier cannot be forgotten, only switched on. */
export type LeftOut = Exclude<LinePart, 'amplifier'> | 'none';
export type ShownLineSlip = LineSlip | 'none';

const ENDS: Readonly<Record<LineEnd, string>> = { instrument: 'i', antenna: 'a' };
const OVER: Readonly<Record<AntennaReference, string>> = { isotropic: 'i', halfWaveDipole: 'd' };
const LEFT_OUT: Readonly<Record<LeftOut, string>> = { none: '0', first: 'f', coax: 'c', second: 's' };
const SLIPS: Readonly<Record<ShownLineSlip, string>> = {
  none: '0',
  forgotten: 'f',
  subtracted: 's',
  twice: 't',
  reference: 'r',
};

const tenths = { type: 'number', step: 0.1, decimals: 1 } as const;

const fields = {
  level: { ...tenths, key: 'l', label: 'Transmitter', kind: 'level', min: 0, max: 50, default: 27 },
  amplifier: { ...tenths, key: 'am', label: 'Amplifier', kind: 'gain', min: 0, max: 30, default: 0 },
  first: { ...tenths, key: 'fp', label: 'First pad', kind: 'loss', min: 0, max: 40, default: 20 },
  coax: { ...tenths, key: 'co', label: 'Coax', kind: 'loss', min: 0, max: 6, default: 0.1 },
  second: { ...tenths, key: 'sp', label: 'Second pad', kind: 'loss', min: 0, max: 40, default: 20 },
  damage: {
    ...tenths,
    key: 'd',
    label: 'The input is damaged at',
    kind: 'level',
    min: -30,
    max: 40,
    default: 0,
  },
  antenna: {
    type: 'number',
    key: 'ag',
    label: 'Antenna',
    kind: 'gain',
    min: -20,
    max: 20,
    step: 0.05,
    decimals: 2,
    default: 2.15,
  },
  over: { type: 'choice', key: 'ao', label: 'Its gain is over', choices: OVER, default: 'isotropic' },
  end: { type: 'choice', key: 'e', label: 'The line ends in', choices: ENDS, default: 'instrument' },
  without: { type: 'choice', key: 'w', label: 'Leave out of the sum', choices: LEFT_OUT, default: 'none' },
  slip: { type: 'choice', key: 'sl', label: 'Slip to look at', choices: SLIPS, default: 'none' },
} as const;

/** What an address says about the line: its level, its parts, its end, what is left out, and the slip that is looked at. */
export const stairsSpec = { version: 1, fields } as const satisfies AddressSpec;

export type LineFields = typeof fields;
export type LineState = StateOf<LineFields>;

/** The line of a state. */
export const lineOf = ({ level, amplifier, first, coax, second, end, antenna, over }: LineState): Line => ({
  levelDbm: level,
  amplifierDb: amplifier,
  firstDb: first,
  coaxDb: coax,
  secondDb: second,
  end,
  antennaDb: antenna,
  over,
});

/** Fields that say something about the line as it ends now. */
export const fieldsFor = (end: LineEnd): readonly (keyof LineFields)[] =>
  end === 'instrument'
    ? ['end', 'level', 'amplifier', 'first', 'coax', 'second', 'damage', 'without', 'slip']
    : ['end', 'level', 'amplifier', 'coax', 'antenna', 'over', 'slip'];
