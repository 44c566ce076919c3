import { expect } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { distanceInU, judgedBy, riskAtEdge, sortedBy } from '../../src/sheet/conformity.ts';
import { heldOf, type VerdictState, verdictSpec } from '../../src/widgets/verdict/spec.ts';

/** The state that an address opens. */
export function verdictState(address: string): VerdictState {
  const { state, problems } = decode(verdictSpec, address);
  expect(problems).toEqual([]);
  return state;
}

/** The numbers of a value held against its limits, by what a check calls them. */
export function verdictFigures(address: string): Readonly<Record<string, number>> {
  const held = heldOf(verdictState(address));
  const { lower = Number.NaN, upper = Number.NaN } = held.specification;
  const { acceptance, probabilityOfConformity = Number.NaN } = judgedBy(held);
  const position = (value = Number.NaN): number => (value - lower) / (upper - lower);
  const risks = sortedBy(held);
  return {
    'probability of conformity': probabilityOfConformity,
    z: distanceInU(held),
    'accepted from': position(acceptance?.lower),
    'accepted to': position(acceptance?.upper),
    'good ones': risks?.conforming ?? Number.NaN,
    'consumer’s risk': risks?.consumer ?? Number.NaN,
    'producer’s risk': risks?.producer ?? Number.NaN,
    'accepted of 100': 100 * (risks?.accepted ?? Number.NaN),
    'good among the rejected': 100 * (risks?.conformingAmongRejected ?? Number.NaN),
    'largest risk of a false accept': 100 * (riskAtEdge(held) ?? Number.NaN),
  };
}
