import type { StateOf } from '../../address/field-spec.ts';
import { CHECK_KEYS, type CheckKey } from '../../sheet/check-keys.ts';
import {
  blankPoint,
  type LinkEntries,
  type PointEntries,
  RULE,
  type SheetEntries,
} from '../../sheet/entries.ts';
import type { sheetAddressSpec } from './address-spec.ts';

/** A sheet in the shape in which an address carries it: no ids, which are given anew by place. */
export type Carried = StateOf<ReturnType<typeof sheetAddressSpec>['fields']>;

/** What a change says of a point that is no longer there. */
const GONE = 'gone';

const yesNo = (is: boolean): 'yes' | 'no' => (is ? 'yes' : 'no');

/** A sheet as an address carries it. */
export function carriedOf(entries: SheetEntries): Carried {
  const { points, links, log, checks, ...own } = entries;
  const place = (id: string): string => {
    const index = points.findIndex((point) => point.id === id);
    return index < 0 ? GONE : pointId(index);
  };
  return {
    ...own,
    ...checks,
    points: points.map(({ id, ...point }) => ({
      ...point,
      read: yesNo(log.read?.includes(id) ?? false),
    })),
    links: links.map(({ id: _, off, assumed, ...link }) => ({
      ...link,
      off: yesNo(off),
      assumed: yesNo(assumed),
    })),
    lockedAt: log.lockedAt,
    changes: log.changes.map(({ what, ...change }) => ({
      ...change,
      what: what === RULE ? RULE : place(what),
    })),
  };
}

const pointId = (index: number): string => `point${index + 1}`;

/** The sheet that an address carried; one point at least. */
export function entriesIn(carried: Carried): SheetEntries {
  const { points, links, lockedAt, changes, ...own } = carried;
  const read = points.flatMap((point, index) => (point.read === 'yes' ? [pointId(index)] : []));
  return {
    ...withoutChecks(own),
    points:
      points.length === 0
        ? [blankPoint(pointId(0))]
        : points.map(({ read: _, ...point }, index): PointEntries => ({ ...point, id: pointId(index) })),
    links: links.map(
      ({ off, assumed, ...link }, index): LinkEntries => ({
        ...link,
        id: `link${index + 1}`,
        off: off === 'yes',
        assumed: assumed === 'yes',
      }),
    ),
    log: { lockedAt, ...(read.length > 0 && { read }), changes },
    checks: checksIn(own),
  };
}

const isCheck = (key: string): key is CheckKey => CHECK_KEYS.some((known) => known === key);

function withoutChecks<Of extends object>(own: Of): Omit<Of, CheckKey> {
  // What is left out is exactly the checks; Object.fromEntries forgets which keys stayed.
  return Object.fromEntries(Object.entries(own).filter(([key]) => !isCheck(key))) as Omit<Of, CheckKey>;
}

const checksIn = (own: Readonly<Record<CheckKey, string>>): Readonly<Record<CheckKey, string>> =>
  // Every key gets its text; Object.fromEntries forgets which keys they were.
  Object.fromEntries(CHECK_KEYS.map((key) => [key, own[key]])) as Record<CheckKey, string>;
