import { type Judgement, judge } from '#compute';
import type { Chain } from '../sheet/chain.ts';
import { chainOf } from '../sheet/evaluated-chain.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { ChainExample } from './example.ts';

/** A chain with everything that is computed of it. */
export interface EvaluatedExample {
  readonly sheet: Sheet;
  readonly chain: Chain;
  readonly judgement: Judgement;
}

/** The sums of an example that is a chain. */
export function evaluatedExample(example: ChainExample): EvaluatedExample {
  const sheet = example.sheet();
  const chain = chainOf(sheet);
  const { specification, rule } = sheet;
  return { sheet, chain, judgement: judge({ result: chain.result, specification, rule }) };
}
