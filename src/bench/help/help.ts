import {
  type HelpQuestion,
  type LinkIds,
  linksOf,
  normalQuantile,
  type Rule,
  readingsThatPay,
  type TargetUncertainty,
  targetForSpecification,
  targetForVerdict,
} from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import type { LinkEntries } from '../../sheet/entries.ts';
import { READINGS_ID } from '../../sheet/scatter.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { betterInputs } from './better-inputs.ts';

/** A link that could be improved, or several that share a cause, with their share of the variance. */
export interface HelpLink {
  readonly ids: LinkIds;
  readonly share: number;
  /** Whether the reader states a better part for one of them, and it can be used. */
  readonly better: 'none' | 'stated' | 'unusable';
}

/** What is asked about a point: which links, widest first, and the question that takes their evaluation. */
export interface Help {
  readonly links: readonly HelpLink[];
  readonly question: HelpQuestion;
}

/** Share of the variance below which improving a link changes nothing that anybody could see. */
const LEAST_SHARE = 1e-6;

/** What could be improved of a point, the widest link first. */
export function helpOf({ sheet, result }: NumberedPoint, entries: readonly LinkEntries[]): Help {
  const { model } = result.chain;
  const better = betterInputs(sheet, entries);
  const { budget } = result.chain.result.propagation;
  const statusOf = (ids: LinkIds): HelpLink['better'] => {
    if (ids.some((id) => better.unusable.includes(id))) return 'unusable';
    return better.inputs.some(({ id }) => ids.includes(id)) ? 'stated' : 'none';
  };
  const links = linksOf(model)
    .map((ids): HelpLink => {
      const rows = budget.filter(({ id }) => ids.includes(id));
      return { ids, share: rows.reduce((sum, { share }) => sum + share, 0), better: statusOf(ids) };
    })
    .filter(({ share, better: status }) => share > LEAST_SHARE || status !== 'none')
    .toSorted((a, b) => b.share - a.share);
  const { specification, rule } = sheet;
  return {
    links,
    question: {
      model,
      specification,
      rule,
      coverageProbability: COVERAGE_PROBABILITY,
      better: better.inputs,
      links: links.map(({ ids }) => ids),
    },
  };
}

/** What more readings would bring. */
export interface ReadingsHelp {
  /** How many there are. */
  readonly count: number;
  /** Scatter of a single one, in dB. */
  readonly scatterDb: number;
  /** How many pay; undefined if every one does. */
  readonly pay: number | undefined;
}

/** How many readings would still pay; undefined where nothing is known of their scatter. */
export function readingsHelp({ sheet, result }: NumberedPoint): ReadingsHelp | undefined {
  const { budget, standardUncertainty } = result.chain.result.propagation;
  const row = budget.find(({ id }) => id === READINGS_ID);
  if (row === undefined) return undefined;
  const count = sheet.readings.length;
  const scatterDb = row.contribution * Math.sqrt(count);
  const otherUncertainty = Math.sqrt(Math.max(0, standardUncertainty ** 2 - row.contribution ** 2));
  return { count, scatterDb, pay: readingsThatPay({ standardDeviation: scatterDb, otherUncertainty }) };
}

/** How sure a measurement would have to be. */
export interface Targets {
  /** Largest expanded uncertainty that decides about this very reading; none under a rule that always decides. */
  readonly verdict: TargetUncertainty | undefined;
  /** What two limits ask for wherever the value lies; none with one limit. */
  readonly specificationDb: number | undefined;
}

/** The target uncertainties of a point (VIM 2.34), in dB. */
export function targetsOf({ sheet: { specification, rule }, result }: NumberedPoint): Targets {
  const multiplier = multiplierOf(rule);
  const { lower, upper } = specification;
  return {
    verdict:
      multiplier === undefined
        ? undefined
        : targetForVerdict({ specification, estimate: result.chain.result.estimate, multiplier }),
    specificationDb:
      lower === undefined || upper === undefined ? undefined : targetForSpecification({ specification }),
  };
}

/** How many times U must fit between estimate and limit; for a required probability that of a bell beyond one limit. */
function multiplierOf(rule: Rule): number | undefined {
  switch (rule.kind) {
    case 'simple':
      return undefined;
    case 'guardBand':
      return rule.multiplier;
    case 'probability':
      return normalQuantile(rule.required) / COVERAGE_FACTOR;
  }
}
