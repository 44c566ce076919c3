import type { Measurement } from '../sheet/measurement.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { CompareEntries } from './entries.ts';

/** Something that occurs in two sheets or more, and may be one and the same thing. */
export interface Candidate {
  readonly kind: 'cause' | 'link';
  readonly name: string;
  /** How many sheets have it. */
  readonly sheets: number;
  /** Whether it counts as one. Causes of one name do unless told otherwise; links of one name only where told so. */
  readonly shared: boolean;
}

type Marks = Pick<CompareEntries, 'same' | 'apart'>;

const used = ({ links }: Measurement) => links.filter(({ off }) => !off);

/** Names of both kinds in one sheet. A link that names its cause is known by that. */
function namesOf(measurement: Measurement): readonly Pick<Candidate, 'kind' | 'name'>[] {
  const links = used(measurement);
  const causes = new Set(links.flatMap(({ cause }) => (cause === undefined ? [] : [cause])));
  const labels = new Set(links.flatMap(({ cause, label }) => (cause === undefined && label ? [label] : [])));
  return [
    ...[...causes].map((name) => ({ kind: 'cause' as const, name })),
    ...[...labels].map((name) => ({ kind: 'link' as const, name })),
  ];
}

/** What two sheets or more have under one name, causes first. */
export function candidatesOf(
  measurements: readonly Measurement[],
  { same, apart }: Marks,
): readonly Candidate[] {
  const counted = new Map<string, Candidate>();
  for (const { kind, name } of measurements.flatMap(namesOf)) {
    const key = `${kind} ${name}`;
    const shared = kind === 'cause' ? !apart.includes(name) : same.includes(name);
    const sheets = (counted.get(key)?.sheets ?? 0) + 1;
    counted.set(key, { kind, name, shared, sheets });
  }
  return [...counted.values()]
    .filter(({ sheets }) => sheets > 1)
    .toSorted((a, b) => (a.kind === b.kind ? 0 : a.kind === 'cause' ? -1 : 1));
}

/** The marks with one candidate the other way round. */
export function turned({ same, apart }: Marks, { kind, name }: Pick<Candidate, 'kind' | 'name'>): Marks {
  const flip = (names: readonly string[]): readonly string[] =>
    names.includes(name) ? names.filter((other) => other !== name) : [...names, name];
  return kind === 'cause' ? { same, apart: flip(apart) } : { same: flip(same), apart };
}

/** A sheet whose causes have names that meet those of other sheets exactly where they are one. */
export function withCauses(sheet: Sheet, id: string, { same, apart }: Marks): Sheet {
  const links = sheet.links.map((link) => {
    const { cause, label } = link;
    if (cause !== undefined)
      return { ...link, cause: apart.includes(cause) ? `${id} ${cause}` : `cause ${cause}` };
    return same.includes(label) ? { ...link, cause: `link ${label}` } : link;
  });
  return { ...sheet, links };
}
