import { randomFrom } from '#compute';
import { drawn } from './bank.ts';
import type { ListedQuestion } from './facts.ts';
import { mixed } from './plan.ts';
import type { ShownSitting } from './shown.ts';

/** What a paper is made of. */
export interface Wish {
  readonly seed: number;
  readonly length: number;
  /** In which topics; every question where it is left out. */
  readonly topics?: readonly string[];
}

/** Questions in an order of chance (Fisher and Yates). */
function shuffled<One>(all: readonly One[], random: () => number): readonly One[] {
  const left = [...all];
  return all.flatMap(() => left.splice(Math.floor(random() * left.length), 1));
}

/**
 * The questions of a paper: the same for the same number, everywhere, as long as the bank stays as it is. Every topic gives as many as
 * another, as far as it has them; fewer than wished where there are no more.
 */
export function paperPlan(
  questions: readonly ListedQuestion[],
  { seed, length, topics }: Wish,
): readonly ListedQuestion[] {
  const random = randomFrom(seed);
  const wanted = questions.filter(({ topic }) => topics?.includes(topic) ?? true);
  const byTopic = new Map<string, ListedQuestion[]>();
  for (const question of shuffled(wanted, random))
    byTopic.set(question.topic, [...(byTopic.get(question.topic) ?? []), question]);
  const piles = [...byTopic.values()];
  const chosen: ListedQuestion[] = [];
  for (let row = 0; chosen.length < Math.min(length, wanted.length); row++)
    chosen.push(...piles.flatMap((pile) => pile.slice(row, row + 1)));
  return mixed(chosen.slice(0, length));
}

/** Papers with their numbers drawn. @throws where the questions cannot be fetched. */
export const drawnPapers = (
  questions: readonly ListedQuestion[],
  wishes: readonly Wish[],
): Promise<readonly DrawnPaper[]> =>
  Promise.all(
    wishes.map(async (wish) => ({
      seed: wish.seed,
      topics: wish.topics ?? [],
      sittings: await Promise.all(paperPlan(questions, wish).map((question) => drawn(question, wish.seed))),
    })),
  );

export interface DrawnPaper {
  readonly seed: number;
  /** Topics that it was drawn from; empty for all. */
  readonly topics: readonly string[];
  readonly sittings: readonly ShownSitting[];
}
