import type { AddressSpec, ChoiceSpec, StateOf } from '../../address/field-spec.ts';
import { type CountedCurrent, type CountedLevel, clubCurrent } from '../../sheet/counted-charges.ts';
import { nearestFirst, type RootUnit, TREE_UNITS } from '../../sheet/unit-tree.ts';

/** Whether a unit shows what it is made of. */
export type Fold = 'folded' | 'open';

const club = clubCurrent();
const FOLDS: Readonly<Record<Fold, string>> = { folded: 'f', open: 'o' };
const fold = <Key extends string>(key: Key, label: string, prepared: Fold) =>
  ({ type: 'choice', key, label, choices: FOLDS, default: prepared }) as const satisfies ChoiceSpec<Fold>;

const ROOTS: Readonly<Record<RootUnit, string>> = { watt: 'w', volt: 'v', ohm: 'o', ampere: 'a' };
const CURRENTS: Readonly<Record<CountedCurrent, string>> = { heating: 'h', crest: 'c' };

const fields = {
  root: { type: 'choice', key: 'u', label: 'The tree of', choices: ROOTS, default: 'watt' },
  watt: fold('uw', 'Watt', 'open'),
  volt: fold('uv', 'Volt', 'open'),
  ohm: fold('uo', 'Ohm', 'open'),
  ampere: fold('ua', 'Ampere', 'open'),
  joule: fold('uj', 'Joule', 'folded'),
  newton: fold('un', 'Newton', 'folded'),
  kilogram: fold('uk', 'Kilogram', 'folded'),
  metre: fold('um', 'Metre', 'folded'),
  second: fold('us', 'Second', 'folded'),
  level: {
    type: 'number',
    key: 'l',
    label: 'Level',
    kind: 'level',
    min: 0,
    max: 50,
    step: 0.1,
    decimals: 1,
    default: club.levelDbm,
  },
  half: {
    type: 'number',
    key: 'kn',
    label: 'The level is known to',
    kind: 'halfWidthDb',
    min: 0,
    max: 3,
    step: 0.01,
    decimals: 2,
    default: club.halfDb,
  },
  load: {
    type: 'number',
    key: 'r',
    label: 'Load',
    kind: 'ohms',
    min: 10,
    max: 200,
    step: 0.5,
    decimals: 1,
    default: club.loadOhm,
  },
  counted: {
    type: 'choice',
    key: 'cu',
    label: 'Current that is counted',
    choices: CURRENTS,
    default: club.counted,
  },
} as const;

/** What an address says about the tree: its root, which units are unfolded, and the level whose charges are counted. */
export const treeSpec = { version: 1, fields } as const satisfies AddressSpec;

export type TreeFields = typeof fields;
export type TreeState = StateOf<TreeFields>;

/** The level whose direct current is counted. */
export const levelOf = ({ level, load, half, counted }: TreeState): CountedLevel => ({
  levelDbm: level,
  loadOhm: load,
  halfDb: half,
  counted,
});

/** A state with all units of its tree open, or all but its root folded. */
export const foldedAll = (state: TreeState, all: Fold): TreeState => ({
  ...state,
  ...Object.fromEntries(TREE_UNITS.map((unit) => [unit, unit === state.root ? 'open' : all])),
});

/** A state with so many units of its tree unfolded, as near to the root as may be; one at least. */
export function openedTo(state: TreeState, count: number): TreeState {
  const units = nearestFirst(state.root);
  return {
    ...state,
    ...Object.fromEntries(units.map((unit, index) => [unit, index < count ? 'open' : 'folded'])),
  };
}
