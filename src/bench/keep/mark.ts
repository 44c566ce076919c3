/** What an entry of the browser's history says of the sheet that it shows. */
export interface KeptMark {
  readonly id: string;
  /** The revision that what stands here was made from. */
  readonly revision: number;
  /** The address was written after that sheet was kept: it may hold more. */
  readonly ahead?: true;
}

/** What stands after `#` where a kept sheet is to be opened, before its id. */
export const KEPT_PLACE = 'kept-';

/** The id of the sheet that a fragment asks for, if it asks for one. */
export const idIn = (hash: string): string | undefined => /^#kept-(\w+)$/.exec(hash)?.[1];

/** The mark in the state of a history entry; undefined where there is none, or none that can be read. */
export function markIn(state: unknown): KeptMark | undefined {
  const mark: unknown =
    typeof state === 'object' && state !== null && 'kept' in state ? state.kept : undefined;
  if (typeof mark !== 'object' || mark === null || !('id' in mark) || !('revision' in mark)) return undefined;
  const { id, revision } = mark;
  if (typeof id !== 'string' || typeof revision !== 'number') return undefined;
  return { id, revision, ...('ahead' in mark && mark.ahead === true && { ahead: true }) };
}

/** The same state of a history entry, whose address is about to be written. */
export function aheadOf(state: unknown): unknown {
  const mark = markIn(state);
  return mark === undefined ? state : { ...Object(state), kept: { ...mark, ahead: true } };
}
