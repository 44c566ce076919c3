import { useEffect, useState } from 'preact/hooks';
import { expect, it } from 'vitest';
import { probe } from './probe.ts';

it('draws a hook anew, runs its effects, and ends it', async () => {
  const seen: string[] = [];
  const count = await probe(() => {
    const [value, set] = useState(0);
    useEffect(() => {
      seen.push(`now ${value}`);
      return () => void seen.push(`no more ${value}`);
    }, [value]);
    return { value, more: () => set((before) => before + 1) };
  });
  expect(count.now().value).toBe(0);
  await count.does(({ more }) => more());
  expect(count.now().value).toBe(1);
  count.end();
  expect(seen).toEqual(['now 0', 'no more 0', 'now 1', 'no more 1']);
});
