/**
 * Why something could not be kept or read: the browser keeps nothing here; it has no room left; what is kept comes from a newer
 * version of this site; somebody else, another tab say, has changed it meanwhile; it is not (or no longer) there; it cannot be read.
 */
export type StoreProblem = 'refused' | 'full' | 'newer' | 'changed' | 'missing' | 'damaged';

/** What came of asking the store: it never throws at a reader. */
export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: StoreProblem };

export const done = <Value>(value: Value): Outcome<Value> => ({ ok: true, value });
export const failed = (problem: StoreProblem): Outcome<never> => ({ ok: false, problem });

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

/** What the browser's error means for a reader. @throws the error itself where it is a slip of this program. */
export function problemOf(error: unknown): StoreProblem {
  switch (nameOf(error)) {
    case 'QuotaExceededError':
      return 'full';
    case 'VersionError':
      return 'newer';
    case 'DataError':
    case 'DataCloneError':
    case 'TypeError':
      throw error;
    default:
      return 'refused';
  }
}
