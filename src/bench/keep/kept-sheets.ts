import { blankSheet } from '../../sheet/blank-sheet.ts';
import type { LinkEntries, LoggedChange, PointEntries, SheetEntries } from '../../sheet/entries.ts';
import {
  blankLink,
  blankPoint,
  ENTRY_FORMS,
  INSTRUMENT_PARTS,
  RULE_KINDS,
  SPECIFICATION_FORMS,
  TABLED_BY,
} from '../../sheet/entries.ts';
import { METHODS, UNITS_OF } from '../../sheet/method.ts';
import { LINK_KINDS } from '../../sheet/sheet.ts';
import { type KeptForm, type KeptStore, keptStore } from '../../store/kept.ts';
import { DELIVERIES, KEYINGS, PERCENT_OF, POWER_KINDS, SOURCES } from '../read/spec.ts';

const YES_NO = ['yes', 'no'];

/** What may stand in the fields that are chosen from a few. */
const SHEET_CHOICES: Choices = {
  method: METHODS,
  power: POWER_KINDS,
  delivery: DELIVERIES,
  keying: KEYINGS,
  rule: RULE_KINDS,
  shows: ['mean', 'peakEnvelope'],
  terminated: YES_NO,
  curve: YES_NO,
};
const LINK_CHOICES: Choices = {
  kind: LINK_KINDS,
  form: ENTRY_FORMS,
  unit: Object.values(UNITS_OF).flat(),
  percentOf: PERCENT_OF,
  source: SOURCES,
  direction: ['with', 'against'],
  by: TABLED_BY,
  part: INSTRUMENT_PARTS,
};
const POINT_CHOICES: Choices = { specification: SPECIFICATION_FORMS };

type Choices = Readonly<Record<string, readonly string[]>>;
type Found = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Found =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * A thing as it was kept, with what a later version asks for besides left blank; what stands there and is not asked for stays, if
 * it is a text or yes or no. Undefined where something is of another kind or none of its choices: better told than guessed.
 */
function completed<Of extends object>(blank: Of, found: unknown, choices: Choices): Of | undefined {
  if (!isObject(found)) return undefined;
  for (const [key, before] of Object.entries(blank)) {
    const value = found[key];
    if (value === undefined) continue;
    if (typeof value !== typeof before) return undefined;
    if (typeof value === 'string' && choices[key]?.includes(value) === false) return undefined;
  }
  const plain = Object.entries(found).filter(([, value]) => ['string', 'boolean'].includes(typeof value));
  // Every key of the blank thing has a value of its kind now; Object.fromEntries forgets which keys they were.
  return { ...blank, ...Object.fromEntries(plain) } as Of;
}

/** A list of such things; undefined where one of them cannot be read, or two have the same id. */
function completedList<Of extends { readonly id: string }>(
  found: unknown,
  blank: (id: string) => Of,
  choices: Choices,
): readonly Of[] | undefined {
  if (!Array.isArray(found)) return undefined;
  const list = found.map((item: unknown, index) => completed(blank(`${index}`), item, choices));
  const whole = list.filter((item) => item !== undefined);
  const ids = new Set(whole.map(({ id }) => id));
  return whole.length === found.length && ids.size === whole.length ? whole : undefined;
}

const isTexts = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((item) => typeof item === 'string');

const BLANK_CHANGE: LoggedChange = { at: '', what: '', from: '', to: '', reason: '' };

function logOf(found: unknown): SheetEntries['log'] | undefined {
  if (!isObject(found)) return undefined;
  const { lockedAt, read, changes } = found;
  if (typeof lockedAt !== 'string' || !Array.isArray(changes)) return undefined;
  if (read !== undefined && !isTexts(read)) return undefined;
  const list = changes.map((change: unknown) => completed(BLANK_CHANGE, change, {}));
  const whole = list.filter((change) => change !== undefined);
  if (whole.length < changes.length) return undefined;
  return { lockedAt, ...(read !== undefined && { read }), changes: whole };
}

/** The sheet that was kept, as it was typed; undefined where this is none. Never throws, whatever it is. */
export function sheetFrom(found: unknown): SheetEntries | undefined {
  if (!isObject(found)) return undefined;
  const { points: _, links: __, log: ___, checks, ...blank } = blankSheet('padsIntoMeter');
  const own = completed(blank, found, SHEET_CHOICES);
  const { points: theirPoints, links: theirLinks, log: theirLog, checks: theirChecks } = found;
  const pointList = completedList<PointEntries>(theirPoints, blankPoint, POINT_CHOICES);
  const linkList = completedList<LinkEntries>(theirLinks, blankLink, LINK_CHOICES);
  const logged = logOf(theirLog);
  const checked = completed(checks, theirChecks, {});
  if (own === undefined || logged === undefined || checked === undefined) return undefined;
  if (pointList === undefined || pointList.length === 0 || linkList === undefined) return undefined;
  return { ...own, points: pointList, links: linkList, log: logged, checks: checked };
}

/** How a sheet is kept. A change of what is read as another thing than before needs the next version. */
export const SHEET_FORM: KeptForm<SheetEntries> = { version: 1, read: sheetFrom };

/** The sheets that are kept in this browser. */
export const keptSheets = (now?: () => string): KeptStore<SheetEntries> =>
  keptStore('sheets', SHEET_FORM, now);
