import { type PowerW, powerW } from '#compute';
import type { LinkEntries } from '../../sheet/entries.ts';
import type { StatedLink } from '../../sheet/measurement.ts';
import { type LinkUnit, type MethodKind, UNITS_OF } from '../../sheet/method.ts';
import { isCorrected } from '../../sheet/resolve-corrections.ts';
import { type Field, readField } from '../../text/read/field.ts';
import { strings } from '../strings.ts';
import type { Collector } from './collector.ts';
import { type LinkReader, linkLabel, linkReader } from './link-reader.ts';
import { amountSpec, hasUnit, LINK_SPECS } from './link-spec.ts';
import { problemStrings } from './problem-strings.ts';
import { readStated } from './read-statement.ts';

/** The link that the entries stand for; what is wrong with them goes to the collector. */
export function readLink(context: {
  entries: LinkEntries;
  method: MethodKind;
  position: number;
  collect: Collector;
}): StatedLink {
  const { entries, position } = context;
  const reader = linkReader(context);
  checkUnit(reader);
  const lossDb = reader.number('loss', LINK_SPECS.loss);
  const rated = reader.optional('rated', LINK_SPECS.rated);
  const stated = readStated(reader);
  if (reader.clean()) checkStated(reader, stated);
  const { id, kind, unit, percentOf, source } = entries;
  return {
    id,
    label: linkLabel(entries, position),
    kind,
    lossDb,
    stated,
    unit,
    percentOf,
    source,
    ...rest(reader, rated === undefined ? undefined : powerW(rated)),
    ...(entries.off && { off: true as const }),
    ...(entries.assumed && { assumed: true as const }),
  };
}

/** What few links have: a rating, a shared cause and its direction, how well a judgement is itself known. */
function rest({ entries, optional, tell, clean }: LinkReader, ratedPowerW: PowerW | undefined) {
  const cause = entries.cause.trim();
  const reliability = optional('reliability', LINK_SPECS.reliability);
  if (reliability !== undefined && clean() && bringsFreedom(entries))
    tell('reliability', problemStrings.reliabilityTwice);
  return {
    ...(ratedPowerW !== undefined && { ratedPowerW }),
    ...(cause !== '' && { cause }),
    ...(cause !== '' && entries.direction === 'against' && { sensitivity: -1 as const }),
    ...(reliability !== undefined && { reliability: reliability / 100 }),
  };
}

const bringsFreedom = ({ form, freedom }: LinkEntries): boolean =>
  form === 'readings' ||
  (['expanded', 'coverage', 'corrections', 'standard'].includes(form) && freedom.trim() !== '');

/** A unit that the method has no reading in. */
function checkUnit({ entries, method, tell }: LinkReader): void {
  const all: readonly LinkUnit[] = UNITS_OF[method];
  const units = entries.form === 'corrections' ? all.filter(isCorrected) : all;
  if (!hasUnit(entries.form) || units.includes(entries.unit)) return;
  tell('unit', problemStrings.unitOfMethod(units.map((unit) => strings.link.units[unit])));
}

/** Keeps what no single number shows: ends the wrong way round, limits more doubtful than wide. */
function checkStated({ tell }: LinkReader, stated: StatedLink['stated']): void {
  if (stated.form === 'asymmetric' && stated.lower > stated.upper) tell('upper', problemStrings.endsSwapped);
  if (stated.form === 'uncertainLimits' && stated.limitHalfWidth > stated.halfWidth)
    tell('doubt', problemStrings.doubtTooLarge);
}

/**
 * The amount that a better part would have, in the link's unit, or what is wrong with it; undefined where none is typed. It is
 * no part of the measurement: what is wrong with it holds nothing up.
 */
export const readBetter = ({ better, unit, form }: LinkEntries): Field | undefined =>
  better.trim() === '' ? undefined : readField(better, amountSpec(hasUnit(form) ? unit : 'dB'));
