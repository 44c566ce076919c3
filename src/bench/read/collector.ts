import { readField } from '../../text/read/field.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import type { FieldPath } from '../form/keys.ts';

/** What is wrong with one field, as a sentence; `label` names the field for the list of all problems. */
export interface EntryProblem {
  readonly path: FieldPath;
  readonly label: string;
  readonly problem: string;
}

/** Reads fields one after the other and keeps what is wrong with them. */
export interface Collector {
  readonly problems: readonly EntryProblem[];
  /**
   * The number in a field. Where there is none, the problem is kept and a stand-in comes back: whoever collects throws
   * everything away if there is any problem, so that the stand-in is never computed with.
   */
  number(field: { path: FieldPath; label: string; text: string; spec: ReadSpec }): number;
  /** The same for a field that may stay empty. */
  optional(field: { path: FieldPath; label: string; text: string; spec: ReadSpec }): number | undefined;
  /** Keeps a problem that is no matter of one number alone. */
  add(problem: EntryProblem): void;
}

/** A collector without problems. */
export function collector(): Collector {
  const problems: EntryProblem[] = [];
  const number: Collector['number'] = ({ path, label, text, spec }) => {
    const field = readField(text, spec);
    if ('value' in field) return field.value;
    problems.push({ path, label, problem: field.problem });
    return spec.max;
  };
  return {
    problems,
    number,
    optional: (field) => (field.text.trim() === '' ? undefined : number(field)),
    add: (problem) => {
      problems.push(problem);
    },
  };
}
