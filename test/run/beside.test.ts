import { describe, expect, it } from 'vitest';
import { runBeside } from './beside.ts';
import { type Step, steps } from './steps.ts';

const step = (name: string, more: Partial<Step> = {}): Step => ({
  name,
  command: [],
  kind: 'one',
  shown: 0,
  ...more,
});

/** What happens to steps of which some fail: `+` where one starts, `-` where it ends; each takes a turn more than the one before. */
async function story(all: readonly Step[], failing: readonly string[] = []): Promise<readonly string[]> {
  const told: string[] = [];
  await runBeside(
    all,
    async ({ name }) => {
      told.push(`+${name}`);
      for (let turn = 0; turn < 3 * (1 + all.findIndex((each) => each.name === name)); turn++)
        await Promise.resolve();
      told.push(`-${name}`);
      return !failing.includes(name);
    },
    ({ name }, missing) => told.push(`${name} without ${missing.join()}`),
  );
  return told;
}

describe('steps of the proof', () => {
  it('run two by two, in their order', async () => {
    expect(await story(['a', 'b', 'c'].map((name) => step(name)))).toEqual([
      '+a',
      '+b',
      '-a',
      '+c',
      '-b',
      '-c',
    ]);
  });

  it('run by themselves where they use all processors', async () => {
    const all = [step('a'), step('b', { alone: true }), step('c')];
    expect(await story(all)).toEqual(['+a', '-a', '+b', '-b', '+c', '-c']);
  });

  it('wait for what they need, and do not run without it', async () => {
    const all = [step('a'), step('b', { needs: ['a'] }), step('c', { needs: ['b'] }), step('d')];
    expect(await story(all)).toEqual(['+a', '-a', '+b', '-b', '+c', '+d', '-c', '-d']);
    expect(await story(all, ['a'])).toEqual(['+a', '-a', 'b without a', 'c without b', '+d', '-d']);
  });

  it('are told of when the last has ended, whatever comes of them', async () => {
    expect(await story([])).toEqual([]);
    expect(await story([step('a')], ['a'])).toEqual(['+a', '-a']);
  });

  it('need only steps that come before them', () => {
    for (const [index, { needs = [] }] of steps.entries())
      for (const need of needs) expect(steps.slice(0, index).map(({ name }) => name)).toContain(need);
  });
});
