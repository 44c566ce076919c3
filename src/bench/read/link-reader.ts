import type { LinkEntries, LinkTextKey } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { isolated } from '../../text/isolate.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { linkPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import type { Collector } from './collector.ts';

/** One link as a reader of its fields sees it: number by key. */
export interface LinkReader {
  readonly entries: LinkEntries;
  readonly method: MethodKind;
  readonly number: (key: LinkTextKey, spec: ReadSpec) => number;
  readonly optional: (key: LinkTextKey, spec: ReadSpec) => number | undefined;
  readonly tell: (key: keyof LinkEntries, problem: string) => void;
  /** Whether nothing was told since the reader was made. */
  readonly clean: () => boolean;
}

/** The name of a link: its own, else its place. */
export const linkLabel = ({ label }: LinkEntries, position: number): string =>
  label.trim() || strings.link.unnamed(position);

/** A reader of one link's fields. */
export function linkReader({
  entries,
  method,
  position,
  collect,
}: {
  entries: LinkEntries;
  method: MethodKind;
  position: number;
  collect: Collector;
}): LinkReader {
  const name = isolated(linkLabel(entries, position));
  const at = (key: keyof LinkEntries) => ({
    path: linkPath(entries.id, key),
    label: strings.link.fieldOf(name, strings.link.labels[key]),
  });
  const field = (key: LinkTextKey, spec: ReadSpec) => ({ ...at(key), text: entries[key], spec });
  const before = collect.problems.length;
  return {
    entries,
    method,
    number: (key, spec) => collect.number(field(key, spec)),
    optional: (key, spec) => collect.optional(field(key, spec)),
    tell: (key, problem) => collect.add({ ...at(key), problem }),
    clean: () => collect.problems.length === before,
  };
}
