import type { CheckKey } from '../../sheet/check-keys.ts';
import type { LinkEntries, PointEntries, SheetEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import type { LinkKind } from '../../sheet/sheet.ts';
import type { FieldPath } from '../form/keys.ts';

/** The sheet's own fields, lists and log apart. */
type SheetChange = Partial<Omit<SheetEntries, 'links' | 'points' | 'log' | 'checks' | 'method'>>;

/**
 * What a reader does on the bench. `at` is the time (ISO 8601), put in by whoever sends: a change of what was agreed after the first
 * reading is logged with it. Paths coalesce typing: what follows on the same path is one step of undo.
 */
export type BenchAction =
  | { readonly type: 'edit'; readonly path: FieldPath; readonly change: SheetChange; readonly at?: string }
  | {
      readonly type: 'editPoint';
      readonly id: string;
      readonly path: FieldPath;
      readonly change: Partial<Omit<PointEntries, 'id'>>;
      readonly at?: string;
    }
  | {
      readonly type: 'editLink';
      readonly id: string;
      readonly path: FieldPath;
      readonly change: Partial<Omit<LinkEntries, 'id' | 'assumed'>>;
    }
  | { readonly type: 'editCheck'; readonly key: CheckKey; readonly text: string }
  /** Why the logged change of that index was made. */
  | { readonly type: 'giveReason'; readonly index: number; readonly reason: string }
  /** Another method: its usual links come in, marked as assumed, in place of those that the one before brought and nobody touched. */
  | { readonly type: 'chooseMethod'; readonly method: MethodKind }
  /** A new point after the last one, with its specification. */
  | { readonly type: 'addPoint' }
  | { readonly type: 'removePoint'; readonly id: string }
  /** Which point is shown and edited; no step of undo. */
  | { readonly type: 'showPoint'; readonly id: string }
  | { readonly type: 'add'; readonly kind: LinkKind; readonly label: string }
  | { readonly type: 'duplicate'; readonly id: string; readonly label: string }
  | { readonly type: 'remove'; readonly id: string }
  /** To a place in the order, 0 for the first. */
  | { readonly type: 'move'; readonly id: string; readonly to: number }
  /** Links that an instrument states, and what else of the sheet follows it; worked out by whoever sends, in a part fetched on demand. */
  | {
      readonly type: 'takeInstrument';
      readonly taken: (entries: SheetEntries) => Partial<Pick<SheetEntries, 'links' | 'load'>> | undefined;
    }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }
  /** Opens a sheet that came by address. */
  | { readonly type: 'open'; readonly entries: SheetEntries; readonly problems: readonly string[] }
  /** Goes on with a sheet where it was left; nothing of what stood here before comes back by undo. */
  | { readonly type: 'resume'; readonly entries: SheetEntries }
  /** Takes over what another tab made of the same sheet; undo brings back what stood here. */
  | { readonly type: 'adopt'; readonly entries: SheetEntries }
  /** An address that cannot be opened at all. */
  | { readonly type: 'refuse'; readonly problems: readonly string[] }
  /** The club's demonstration. */
  | { readonly type: 'demonstration' }
  /** An empty sheet by a method, with its usual links. */
  | { readonly type: 'fresh'; readonly method: MethodKind }
  | { readonly type: 'grasp' }
  | { readonly type: 'pull'; readonly id: string; readonly expandedDb: number }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  | { readonly type: 'show'; readonly what: 'limits' | 'curve'; readonly on: boolean };
