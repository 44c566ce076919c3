import type { Step } from './steps.ts';

/** So many steps that use one processor run beside each other. */
const BESIDE = 2;

/**
 * Runs steps in their order, two that use one processor beside each other, and each after those that it needs. `run` answers whether
 * the step held; where one that it needs did not, `miss` is told of it instead. Done when all are.
 */
export async function runBeside(
  steps: readonly Step[],
  run: (step: Step) => Promise<boolean>,
  miss: (step: Step, missing: readonly string[]) => void,
): Promise<void> {
  const bad = new Set<string>();
  const running = new Map<Step, Promise<void>>();
  const waitsFor = (step: Step): boolean =>
    running.size >= (step.alone ? 1 : BESIDE) ||
    [...running.keys()].some(({ alone, name }) => alone || step.needs?.includes(name));
  for (const step of steps) {
    while (waitsFor(step)) await Promise.race(running.values());
    const missing = step.needs?.filter((need) => bad.has(need)) ?? [];
    if (missing.length > 0) {
      miss(step, missing);
      bad.add(step.name);
      continue;
    }
    running.set(
      step,
      run(step).then((held) => {
        if (!held) bad.add(step.name);
        running.delete(step);
      }),
    );
  }
  await Promise.all(running.values());
}
