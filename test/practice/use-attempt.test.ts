import { describe, expect, it } from 'vitest';
import { useAttempt } from '../../src/practice/use-attempt.ts';
import { probe } from '../hooks/probe.ts';
import { choiceSitting, typedSitting } from './sittings.ts';

const page = (sitting = choiceSitting) => probe(() => useAttempt(sitting, 'lost'));

describe('an answer', () => {
  it('is marked as it stands', async () => {
    const { does, now } = await page();
    await does(({ give }) => give('b'));
    await does(({ check }) => check());
    expect(now().marked?.outcome).toBe('right');
    await does(({ again }) => again());
    expect(now()).toMatchObject({ given: '', marked: undefined });
  });

  it('that cannot be read says so', async () => {
    const { does, now } = await page(typedSitting);
    await does(({ give }) => give('many'));
    await does(async ({ check }) => expect(await check()).toBeUndefined());
    expect(now().problem).toBeDefined();
    await does(({ give }) => give('7'));
    expect(now().problem).toBeUndefined();
  });

  it('counts once where it is sent twice', async () => {
    const { does } = await page();
    await does(({ give }) => give('b'));
    await does(async ({ check }) => {
      const marks = await Promise.all([check(), check()]);
      expect(marks.filter((mark) => mark !== undefined)).toHaveLength(1);
    });
  });

  it.each([
    ['another answer', 'give', 'c'],
    ['a doubt', 'doubt', true],
  ] as const)('is not marked where %s comes before its mark', async (_, name, to) => {
    const { does, now } = await page();
    await does(({ give }) => give('b'));
    await does(async (attempt) => {
      const mark = attempt.check();
      attempt[name](to as never);
      expect(await mark).toBeUndefined();
    });
    expect(now().marked).toBeUndefined();
    await does(({ check }) => check());
    expect(now().marked?.outcome).toBe(name === 'give' ? 'wrong' : 'right');
  });
});
