import { type CheapestChange, cheapestSteps, helpSteps, type LinkHelp } from '#compute';
import type { Help } from './help.ts';

/** What is known so far of what would help. */
export interface HelpFound {
  /** In the order of the links; those still to come are missing at the end. */
  readonly rows: readonly LinkHelp[];
  /** Undefined as long as it is searched for. */
  readonly cheapest: CheapestChange | undefined;
}

/** Before anything is computed. */
export const NOTHING_FOUND: HelpFound = { rows: [], cheapest: undefined };

/**
 * The work of finding out what would help, as steps that each evaluate the model once at most, to be run in slices. `tell` hears of
 * each link that is complete, and of the cheapest change at the end.
 */
export function* helpWork(
  { question }: Pick<Help, 'question'>,
  tell: (found: HelpFound) => void,
): Generator<() => void, void> {
  let rows: readonly LinkHelp[] = [];
  yield* stepsOf(helpSteps(question), (help) => {
    if (help === undefined) return;
    rows = [...rows, help];
    tell({ rows, cheapest: undefined });
  });
  const { better: _, links: __, ...judged } = question;
  yield* stepsOf(
    cheapestSteps(judged),
    () => undefined,
    (cheapest) => tell({ rows, cheapest }),
  );
}

/** A generator's steps one by one, for somebody else to run. */
function* stepsOf<Told, End>(
  work: Generator<Told, End>,
  hear: (told: Told) => void,
  end: (result: End) => void = () => undefined,
): Generator<() => void, void> {
  let done = false;
  while (!done)
    yield () => {
      const step = work.next();
      done = step.done === true;
      if (step.done) end(step.value);
      else hear(step.value);
    };
}
