import type { DefiningConstant } from '#compute';
import type { TreeUnit } from '../../sheet/unit-tree.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

interface Named {
  readonly symbol: string;
  readonly name: string;
}

const unitNames: Readonly<Record<TreeUnit, Named>> = {
  watt: { symbol: 'W', name: 'watt' },
  volt: { symbol: 'V', name: 'volt' },
  ohm: { symbol: 'Ω', name: 'ohm' },
  ampere: { symbol: 'A', name: 'ampere' },
  joule: { symbol: 'J', name: 'joule' },
  newton: { symbol: 'N', name: 'newton' },
  kilogram: { symbol: 'kg', name: 'kilogram' },
  metre: { symbol: 'm', name: 'metre' },
  second: { symbol: 's', name: 'second' },
};

/** Constants with a short name for the wall, and their units as the SI gives them. */
const constantNames: Readonly<
  Record<DefiningConstant, Named & { readonly short: string; readonly unit: string }>
> = {
  caesiumFrequency: { symbol: 'Δν', name: 'caesium frequency', short: 'caesium', unit: 'Hz' },
  lightSpeed: { symbol: 'c', name: 'speed of light', short: 'light', unit: 'm/s' },
  planck: { symbol: 'h', name: 'Planck constant', short: 'Planck', unit: 'J s' },
  elementaryCharge: { symbol: 'e', name: 'elementary charge', short: 'charge', unit: 'C' },
  boltzmann: { symbol: 'k', name: 'Boltzmann constant', short: 'heat', unit: 'J/K' },
};

/** Words of the tree of units. */
export const strings = {
  unitNames,
  constantNames,
  name: 'What a unit is made of, down to the defining constants',
  description: (summary: string): string =>
    `A tree from left to right: each unit with the units and constants that it is a product of, each with its power. Dashed boxes are drawn out elsewhere in the tree. ${summary}`,
  root: ({ one, equals, constants }: { one: string; equals: string; constants: string }): string =>
    `1 ${one} ${equals} ${constants}`,
  rootWords: {
    gone: (names: string): string => `and nothing else: ${names} cancels on the way down`,
    goneTwo: (names: string): string => `and nothing else: ${names} cancel on the way down`,
    kept: 'and nothing else: every constant on the way down stays',
  },
  and: ' and ',
  about: 'is about',
  own: {
    watt: (share: string): string => `your level: ${share}`,
    volt: (share: string): string => `direct, across the load, heats it as your level does: ${share}`,
    ohm: (share: string): string => `your load, as it is marked: ${share}`,
    ampere: (share: string): string => `direct, through the load, heats it as your level does: ${share}`,
  },
  ends: ({ text, lower, upper }: { text: string; lower: string; upper: string }): string =>
    `${text}, ${lower} to ${upper}`,
  within: ({ text, lower, upper }: { text: string; lower: string; upper: string }): string =>
    `${text} (${lower} to ${upper})`,
  charges: (count: string): string => `${count} charges a second`,
  chargesWords: {
    heating: 'move in that direct current. RF of the same power moves none on balance: it goes to and fro',
    crest: (power: string): string =>
      `counted from the crest of the alternating current. A direct current of that size would heat the load with ${power}`,
  },
  claimed: ' All these digits claim that the level is known exactly.',
  table: {
    caption: 'Every unit of this tree, and every constant that it ends at',
    unit: 'Unit or constant',
    parts: 'Made of',
    constants: 'In constants',
    own: 'Yours',
    unfold: 'Unfold',
    fold: 'Fold',
    fixed: (text: string): string => `${text}, exactly: the number was agreed on, and the branch ends here`,
  },
  ownWords: {
    joule: (energy: string): string => `${energy}: in each second`,
    newton: (force: string): string => `${force}: moved along at a metre a second`,
    kilogram: (mass: string): string => `${mass}: sped up by that force by a metre a second each second`,
    metre: (time: string): string => `light needs ${time}`,
    second: (count: string): string => `${count} periods`,
  },
  unfolded: ({ open, all }: { open: number; all: number }): string => `${open} of ${all} units unfolded`,
  all: { open: 'Unfold everything', folded: 'Fold everything' },
  settings: {
    caption: 'The root of the tree, and your own level',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      root: { watt: 'The watt', volt: 'The volt', ohm: 'The ohm', ampere: 'The ampere' },
      counted: {
        heating: 'The direct current that heats as much',
        crest: 'The crest of the alternating current',
      },
    },
    units: { level: 'dBm', half: 'dB', load: 'ohm' },
  } satisfies SettingsWords,
  note: 'Press a box, or the button in its row, to see what a unit is made of. Each unit is drawn out once, nearest to the root; where it stands again its box is dashed. Small raised figures are powers: s⁻¹ is “per second”. Δν is the frequency of the caesium transition that defines the second.',
  reset: 'Back to the watt',
  noScript:
    'Unfolding and typing need JavaScript; the table above has the whole tree, with every number, without it.',
  stage: {
    unfolded: { type: 'number', label: 'Units unfolded', kind: 'number', step: 1, decimals: 0, whole: true },
  },
} as const;
