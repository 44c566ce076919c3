import type { Given, Marked } from '../questions/bank/mark.ts';
import type { Misconception } from '../questions/bank/misconceptions.ts';
import type { TopicId } from '../questions/bank/topics.ts';
import type { BankQuestion, Sitting } from '../questions/bank/types.ts';
import type { ListedQuestion } from './facts.ts';
import type { ShownSitting } from './shown.ts';

/** The questions of each topic, fetched when one of them is asked. */
const TOPIC_QUESTIONS: Readonly<Record<TopicId, () => Promise<readonly BankQuestion[]>>> = {
  ratios: async () => (await import('../questions/bank/ratios/index.ts')).RATIOS,
  volts: async () => (await import('../questions/bank/volts/index.ts')).VOLTS,
  powers: async () => (await import('../questions/bank/powers/index.ts')).POWERS,
  lines: async () => (await import('../questions/bank/lines/index.ts')).LINES,
  reflections: async () => (await import('../questions/bank/reflections/index.ts')).REFLECTIONS,
  methods: async () => (await import('../questions/bank/methods/index.ts')).METHODS,
  bands: async () => (await import('../questions/bank/bands/index.ts')).BANDS,
  verdicts: async () => (await import('../questions/bank/verdicts/index.ts')).VERDICTS,
  traceability: async () => (await import('../questions/bank/traceability/index.ts')).TRACEABILITY,
  cautions: async () => (await import('../questions/bank/cautions/index.ts')).CAUTIONS,
};

/** A question with the numbers of a seed. @throws RangeError for a question that the bank does not have. */
export async function drawn({ id, topic }: ListedQuestion, seed: number): Promise<ShownSitting> {
  const [questions, { sitting }, { shown }] = await Promise.all([
    TOPIC_QUESTIONS[topic](),
    import('../questions/bank/sitting.ts'),
    import('./shown.ts'),
  ]);
  const question = questions.find((each) => each.id === id);
  if (question === undefined)
    throw new RangeError(`drawn: the topic must have the question, got ${JSON.stringify(id)} in ${topic}`);
  return shown(sitting(question, seed));
}

/** Marks an answer; what marks is fetched when something is first marked. */
export async function marked(sitting: Sitting, given: Given): Promise<Marked> {
  const { mark } = await import('../questions/bank/mark.ts');
  return mark(sitting, given);
}

/** Misconceptions by their ids; one that the register does not have (any more) is left out. */
export async function mistakesOf(ids: readonly string[]): Promise<ReadonlyMap<string, Misconception>> {
  const { MISCONCEPTIONS } = await import('../questions/bank/misconceptions.ts');
  const all: Readonly<Record<string, Misconception>> = MISCONCEPTIONS;
  return new Map(
    ids.flatMap((id) => {
      const found = Object.hasOwn(all, id) ? all[id] : undefined;
      return found === undefined ? [] : [[id, found] as const];
    }),
  );
}
