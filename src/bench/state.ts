import { clubSheet } from '../sheet/club.ts';
import { blankLink, type LinkEntries, type SheetEntries } from '../sheet/entries.ts';
import type { LinkKind, Sheet } from '../sheet/sheet.ts';
import type { EntryProblem } from './collector.ts';
import { entriesOf } from './entries-of.ts';
import type { FieldPath } from './keys.ts';
import { pulledLink } from './pull.ts';
import { readEntries } from './read-entries.ts';
import { MOST_LINKS, STARTS } from './spec.ts';

/** Something taken away that can be brought back. */
export type Taken =
  | { readonly what: 'link'; readonly link: LinkEntries; readonly index: number }
  | { readonly what: 'sheet'; readonly entries: SheetEntries };

export interface BenchState {
  /** Everything as typed. */
  readonly entries: SheetEntries;
  readonly problems: readonly EntryProblem[];
  /** Sheet of the last entries that were all usable: what figure and result show. */
  readonly sheet: Sheet;
  /** Sheet before the last change: what the ghost shows. */
  readonly before: Sheet | undefined;
  /** Field of the last change: what is typed letter by letter is one change. */
  readonly lastPath: FieldPath | undefined;
  /** While a handle is held: the state to return to on cancel. */
  readonly held: { readonly entries: SheetEntries; readonly sheet: Sheet } | undefined;
  /** What was taken away, the latest last. */
  readonly taken: readonly Taken[];
  /** What could not be read of the address that was opened. */
  readonly addressProblems: readonly string[];
  readonly showLimits: boolean;
  readonly showCurve: boolean;
}

export type BenchAction =
  | { readonly type: 'edit'; readonly path: FieldPath; readonly change: Partial<Omit<SheetEntries, 'links'>> }
  | {
      readonly type: 'editLink';
      readonly id: string;
      readonly path: FieldPath;
      readonly change: Partial<Omit<LinkEntries, 'id'>>;
    }
  | { readonly type: 'add'; readonly kind: LinkKind; readonly label: string }
  | { readonly type: 'remove'; readonly id: string }
  | { readonly type: 'move'; readonly id: string; readonly by: -1 | 1 }
  /** Brings back what was taken away last. */
  | { readonly type: 'bringBack' }
  /** Opens a sheet that came by address. */
  | { readonly type: 'open'; readonly entries: SheetEntries; readonly problems: readonly string[] }
  /** An address that cannot be opened at all. */
  | { readonly type: 'refuse'; readonly problems: readonly string[] }
  | { readonly type: 'demonstration' }
  | { readonly type: 'grasp' }
  | { readonly type: 'pull'; readonly id: string; readonly expandedDb: number }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  | { readonly type: 'show'; readonly what: 'limits' | 'curve'; readonly on: boolean };

/** What the bench opens with: the club's demonstration transmitter. */
export function demonstration(): BenchState {
  const sheet = clubSheet();
  return {
    entries: entriesOf(sheet),
    problems: [],
    sheet,
    before: undefined,
    lastPath: undefined,
    held: undefined,
    taken: [],
    addressProblems: [],
    showLimits: true,
    showCurve: false,
  };
}

/** Total and pure: what names no link, or asks for a place that is not there, changes nothing. */
export function reduceBench(state: BenchState, action: BenchAction): BenchState {
  switch (action.type) {
    case 'edit':
      return settled(state, { ...state.entries, ...action.change }, action.path);
    case 'editLink':
      return settled(state, withLink(state.entries, action.id, action.change), action.path);
    case 'add':
      return settled(state, withNewLink(state.entries, action), undefined);
    case 'remove':
      return removed(state, action.id);
    case 'move':
      return settled(state, moved(state.entries, action), undefined);
    case 'bringBack':
      return broughtBack(state);
    case 'open':
      return { ...replaced(state, action.entries), addressProblems: action.problems };
    case 'refuse':
      return { ...state, addressProblems: action.problems };
    case 'demonstration':
      return { ...replaced(state, demonstration().entries), addressProblems: [] };
    case 'grasp':
      return { ...state, before: state.sheet, held: { entries: state.entries, sheet: state.sheet } };
    case 'pull':
      return pulled(state, action);
    case 'release':
      return { ...state, held: undefined };
    case 'cancel':
      return state.held
        ? { ...settled(state, state.held.entries, undefined), before: undefined, held: undefined }
        : state;
    case 'show':
      return action.what === 'limits'
        ? { ...state, showLimits: action.on }
        : { ...state, showCurve: action.on };
  }
}

/** The state with these entries: the sheet follows if all of them can be used and otherwise stays the last good one. */
function settled(state: BenchState, entries: SheetEntries, path: FieldPath | undefined): BenchState {
  if (entries === state.entries) return state;
  const { sheet, problems } = readEntries(entries);
  const sameField = path !== undefined && path === state.lastPath;
  const keepsGhost = state.held !== undefined || sameField || sheet === undefined;
  return {
    ...state,
    entries,
    problems,
    sheet: sheet ?? state.sheet,
    before: keepsGhost ? state.before : state.sheet,
    lastPath: path,
  };
}

const withLink = (entries: SheetEntries, id: string, change: Partial<LinkEntries>): SheetEntries =>
  entries.links.some((link) => link.id === id)
    ? { ...entries, links: entries.links.map((link) => (link.id === id ? { ...link, ...change } : link)) }
    : entries;

/** A new link goes in at the foot, next to the transmitter. */
function withNewLink(
  entries: SheetEntries,
  { kind, label }: { kind: LinkKind; label: string },
): SheetEntries {
  if (entries.links.length >= MOST_LINKS) return entries;
  const link = { ...blankLink(freeId(entries.links)), kind, label, ...STARTS[kind], amount: '0' };
  return { ...entries, links: [...entries.links, link] };
}

/** The first of link1, link2 ... that no link has. */
function freeId(links: readonly LinkEntries[]): string {
  const used = new Set(links.map(({ id }) => id));
  let number = links.length + 1;
  while (used.has(`link${number}`)) number++;
  return `link${number}`;
}

function removed(state: BenchState, id: string): BenchState {
  const { links } = state.entries;
  const index = links.findIndex((link) => link.id === id);
  const link = links[index];
  if (link === undefined) return state;
  const entries = { ...state.entries, links: links.filter((other) => other !== link) };
  return { ...settled(state, entries, undefined), taken: [...state.taken, { what: 'link', link, index }] };
}

function moved(entries: SheetEntries, { id, by }: { id: string; by: -1 | 1 }): SheetEntries {
  const from = entries.links.findIndex((link) => link.id === id);
  const to = from + by;
  const link = entries.links[from];
  const other = entries.links[to];
  if (link === undefined || other === undefined) return entries;
  const links = entries.links.map((each, index) => (index === from ? other : index === to ? link : each));
  return { ...entries, links };
}

function broughtBack(state: BenchState): BenchState {
  const last = state.taken.at(-1);
  if (last === undefined) return state;
  const without = { ...state, taken: state.taken.slice(0, -1) };
  if (last.what === 'sheet') return replaced(without, last.entries);
  const { links } = state.entries;
  const clash = links.some(({ id }) => id === last.link.id);
  const link = clash ? { ...last.link, id: freeId(links) } : last.link;
  const entries = { ...state.entries, links: links.toSpliced(last.index, 0, link) };
  return settled(without, entries, undefined);
}

/** Another sheet in place of this one, which can be brought back unless it is only the demonstration. */
function replaced(state: BenchState, entries: SheetEntries): BenchState {
  const before = state.entries;
  const own = JSON.stringify(before) !== JSON.stringify(demonstration().entries);
  const taken =
    own && before !== entries ? [...state.taken, { what: 'sheet', entries: before } as const] : state.taken;
  return { ...settled({ ...state, held: undefined }, entries, undefined), before: undefined, taken };
}

function pulled(state: BenchState, { id, expandedDb }: { id: string; expandedDb: number }): BenchState {
  const link = pulledLink({ sheet: state.sheet, id, expandedDb });
  if (link === undefined) return state;
  return settled(state, withLink(state.entries, id, link), undefined);
}
