import { type KeptMark, markIn } from './mark.ts';

/** Which sheet stands on the page, and whether it is kept as it stands. */
export interface Standing {
  readonly id: string;
  /** Undefined as long as it has not been kept. */
  readonly revision: number | undefined;
  readonly clean: boolean;
}

/** What the history entry should say: an address that was written after the last keeping stays ahead until the next. */
export function markOf({ id, revision, clean }: Standing, now: KeptMark | undefined): KeptMark | undefined {
  if (revision === undefined) return undefined;
  const ahead = !clean && now?.id === id && now.ahead === true;
  return { id, revision, ...(ahead && { ahead }) };
}

const same = (a: KeptMark | undefined, b: KeptMark | undefined): boolean =>
  a?.id === b?.id && a?.revision === b?.revision && a?.ahead === b?.ahead;

/** Notes in the history entry which kept sheet it shows, so that a reload goes on with it. */
export function setMark(standing: Standing): void {
  const now = markIn(history.state);
  const next = markOf(standing, now);
  if (same(now, next)) return;
  const { kept: _, ...rest } = Object(history.state);
  try {
    history.replaceState(next === undefined ? rest : { ...rest, kept: next }, '');
  } catch {
    // some browsers refuse many changes in a short time; then a reload opens the address
  }
}
