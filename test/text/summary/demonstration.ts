import {
  componentOf,
  evaluate,
  judge,
  type Model,
  type Rule,
  type Specification,
  type Statement,
} from '#compute';
import { SITE_NAME } from '../../../src/text/site-name.ts';
import type { SummaryInput } from '../../../src/text/summary/summarise.ts';

const limits = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });

/** A chain in decibels: reading -13.4 dBm, two pads and a cable in front of a receiver. Invented values. */
export const parts = [
  { id: 'receiver', label: 'Receiver', statement: limits(2) },
  { id: 'mismatch', label: 'Mismatch', statement: { form: 'limits', shape: 'arcsine', halfWidth: 0.2 } },
  { id: 'cable', label: 'Cable', lossDb: 0.2, statement: limits(0.1) },
  { id: 'second', label: 'Second pad', lossDb: 20, statement: limits(0.5) },
  { id: 'first', label: 'First pad', lossDb: 20, statement: limits(0.5) },
] as const satisfies readonly { id: string; label: string; lossDb?: number; statement: Statement }[];

type DemonstrationPart = { id: string; label: string; lossDb?: number; statement: Statement };

export function modelOf(list: readonly DemonstrationPart[], constant = 26.8): Model {
  const inputs = list.map(({ id, statement }) =>
    componentOf({ id, statement, unit: 'dB', percentOf: 'reading' }),
  );
  return { kind: 'sum', constant, inputs, sensitivities: inputs.map(() => 1) };
}

export const specification: Specification = { lower: 25.5, upper: 28.5 };

/** Everything that a summary can be made of, for the chain above or another. */
export function inputOf(
  list: readonly DemonstrationPart[] = parts,
  rule: Rule = { kind: 'guardBand', multiplier: 1 },
  limit: Specification = specification,
): SummaryInput {
  const result = evaluate({ model: modelOf(list), coverageFactor: 2 });
  return {
    what: 'Power at the socket',
    result,
    unit: 'dBm',
    parts: list.map(({ statement, ...part }) => ({ ...part, stated: { statement, unit: 'dB' } })),
    readings: { mean: -13.4, count: 1, unit: 'dBm' },
    judged: { specification: limit, rule, judgement: judge({ result, specification: limit, rule }) },
    assumptions: ['steady carrier', '50 \u03a9', 'pads not hot'],
    made: `${SITE_NAME}, version 0`,
    link: 'https://example.org/examples/two-pads/?a=0.5&v=1',
  };
}
