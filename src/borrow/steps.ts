/** What undo and redo of a form go by. */
export interface Steps<Entries> {
  /** Entries to go back to, the latest last, and those to go forward to, the next last. */
  readonly past: readonly Entries[];
  readonly future: readonly Entries[];
  /** Field of the last change: letters typed one after the other are one step of undo. */
  readonly lastPath: string | undefined;
}

/** A form with its steps. */
export interface Stepped<Entries> extends Steps<Entries> {
  readonly entries: Entries;
}

/** More steps than this are not kept. */
export const MOST_STEPS = 100;

/** The steps once something of a form was changed; what goes on in the field of the last change is no step of its own. */
export function stepsAfter<Entries>(
  { entries, past, lastPath }: Stepped<Entries>,
  path: string | undefined,
): Steps<Entries> {
  const same = path !== undefined && path === lastPath && past.length > 0;
  return { past: same ? past : [...past, entries].slice(-MOST_STEPS), future: [], lastPath: path };
}

/** One step back; undefined where there is none. */
export function stepBack<Entries>(form: Stepped<Entries>): Stepped<Entries> | undefined {
  const entries = form.past.at(-1);
  if (entries === undefined) return undefined;
  const future = [...form.future, form.entries];
  return { entries, past: form.past.slice(0, -1), future, lastPath: undefined };
}

/** One step forward again; undefined where there is none. */
export function stepOn<Entries>(form: Stepped<Entries>): Stepped<Entries> | undefined {
  const entries = form.future.at(-1);
  if (entries === undefined) return undefined;
  const past = [...form.past, form.entries];
  return { entries, past, future: form.future.slice(0, -1), lastPath: undefined };
}
