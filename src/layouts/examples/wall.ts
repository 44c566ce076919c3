import type { Example } from '../../examples/example.ts';
import { inSteps, packed } from '../../stage/numbers.ts';

/** An outcome in words, as the wall has it. */
export interface Told {
  readonly name: string;
  readonly value: string;
}

/** What of an example is shown on several slides where one has no room for all its numbers: a list a slide. */
export interface Wall {
  readonly question: readonly string[];
  /** Outcomes of a sum; none of a chain, whose result is shown otherwise. */
  readonly answer: readonly (readonly Told[])[];
  readonly mistake: readonly string[];
  readonly care: readonly (readonly string[])[];
}

/** The slides of an example around those of its sum. */
export function wallOf(example: Example): Wall {
  const outcomes = example.kind === 'chain' ? [] : example.outcomes();
  const told = outcomes.map(({ name, value }) => ({ name, value: value('shown') }));
  return {
    question: inSteps(example.question),
    answer: packed(told, ({ name, value }) => `${name}: ${value}`),
    mistake: inSteps(example.mistake()),
    care: packed(example.cautions, (caution) => caution),
  };
}
