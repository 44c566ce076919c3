import { componentOf, powerW, type Statement } from '#compute';
import type { EntryForm, LinkEntries, LinkTextKey } from '../sheet/entries.ts';
import type { Link } from '../sheet/sheet.ts';
import type { ReadSpec } from '../text/read/quantity.ts';
import type { Collector } from './collector.ts';
import { linkPath } from './keys.ts';
import { amountSpec, endSpec, FORM_KEYS, LINK_SPECS } from './spec.ts';
import { strings } from './strings.ts';

/** One link as a reader of its fields sees it: number by key. */
interface LinkReader {
  readonly entries: LinkEntries;
  readonly number: (key: LinkTextKey, spec: ReadSpec) => number;
  readonly optional: (key: LinkTextKey, spec: ReadSpec) => number | undefined;
}

/** The link that the entries stand for; what is wrong with them goes to the collector. */
export function readLink(entries: LinkEntries, position: number, collect: Collector): Link {
  const { id, kind, unit, percentOf, source } = entries;
  const label = entries.label.trim() || strings.link.unnamed(position);
  const field = (key: LinkTextKey, spec: ReadSpec) => ({
    path: linkPath(id, key),
    label: strings.link.fieldOf(label, strings.link.labels[key]),
    text: entries[key],
    spec,
  });
  const reader: LinkReader = {
    entries,
    number: (key, spec) => collect.number(field(key, spec)),
    optional: (key, spec) => collect.optional(field(key, spec)),
  };
  const before = collect.problems.length;
  const lossDb = reader.number('loss', LINK_SPECS.loss);
  const rated = reader.optional('rated', LINK_SPECS.rated);
  const statement = readStatement(reader);
  const cause = entries.cause.trim();
  const link: Link = {
    id,
    label,
    kind,
    lossDb,
    statement,
    unit,
    percentOf,
    source,
    ...(rated !== undefined && { ratedPowerW: powerW(rated) }),
    ...(cause !== '' && { cause }),
  };
  if (collect.problems.length === before) checkStatement(link, entries, collect);
  return link;
}

function readStatement({ entries, number, optional }: LinkReader): Statement {
  const amount = (): number => number('amount', amountSpec(entries.unit));
  const end = (key: 'lower' | 'upper'): number => number(key, endSpec(entries.unit));
  const freedom = () => {
    const degreesOfFreedom = optional('freedom', LINK_SPECS.freedom);
    return degreesOfFreedom === undefined ? {} : { degreesOfFreedom };
  };
  switch (entries.form) {
    case 'rectangular':
    case 'triangular':
    case 'arcsine':
      return { form: 'limits', shape: entries.form, halfWidth: amount() };
    case 'trapezoid':
      return { form: 'trapezoid', halfWidth: amount(), topRatio: number('top', LINK_SPECS.top) };
    case 'uncertainLimits':
      return {
        form: 'uncertainLimits',
        halfWidth: amount(),
        limitHalfWidth: number('doubt', amountSpec(entries.unit)),
      };
    case 'asymmetric':
      return { form: 'asymmetric', lower: end('lower'), upper: end('upper') };
    case 'expanded':
      return {
        form: 'expanded',
        expanded: amount(),
        coverageFactor: number('factor', LINK_SPECS.factor),
        ...freedom(),
      };
    case 'coverage':
      return {
        form: 'coverage',
        expanded: amount(),
        probability: number('probability', LINK_SPECS.probability) / 100,
        ...freedom(),
      };
    case 'standard':
      return { form: 'standard', standardUncertainty: amount(), ...freedom() };
    case 'readings':
      return { form: 'readings', standardDeviation: amount(), count: number('count', LINK_SPECS.count) };
    case 'displayStep':
      return { form: 'displayStep', step: amount() };
    case 'halfWithin':
      return { form: 'halfWithin', halfWidth: amount() };
  }
}

/** Keeps what no single number shows. */
function checkStatement(link: Link, { form }: LinkEntries, collect: Collector): void {
  const fault = statementFault(link, form);
  if (fault === undefined) return;
  const label = strings.link.fieldOf(link.label, strings.link.labels[fault.key]);
  collect.add({ path: linkPath(link.id, fault.key), label, problem: fault.problem });
}

/** Ends the wrong way round, limits more doubtful than wide, percentages that reach down to nothing. */
function statementFault(
  { id, statement, unit, percentOf }: Link,
  form: EntryForm,
): { key: LinkTextKey; problem: string } | undefined {
  if (statement.form === 'asymmetric' && statement.lower > statement.upper)
    return { key: 'upper', problem: strings.link.endsSwapped };
  if (statement.form === 'uncertainLimits' && statement.limitHalfWidth > statement.halfWidth)
    return { key: 'doubt', problem: strings.link.doubtTooLarge };
  try {
    componentOf({ id, statement, unit, percentOf });
    return undefined;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { key: FORM_KEYS[form][0] ?? 'amount', problem: strings.link.noComponent };
  }
}
