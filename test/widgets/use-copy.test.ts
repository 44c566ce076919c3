import { afterEach, describe, expect, it, vi } from 'vitest';
import { useCopy } from '../../src/widgets/parts/use-copy.ts';
import { probe } from '../hooks/probe.ts';

afterEach(() => vi.unstubAllGlobals());

/** A browser that puts a text on its clipboard once it is let to. */
function slowClipboard() {
  const waiting: { readonly text: string; readonly allow: () => void }[] = [];
  vi.stubGlobal('navigator', {
    clipboard: {
      writeText: (text: string) => new Promise<void>((allow) => void waiting.push({ text, allow })),
    },
  });
  return waiting;
}

describe('copying', () => {
  it('says so when it is done', async () => {
    vi.stubGlobal('navigator', { clipboard: { writeText: async () => undefined } });
    const use = await probe(useCopy);
    await use.does(({ copy }) => copy('27 dBm'));
    expect(use.now().copied).toEqual({ state: 'done', text: '27 dBm' });
  });

  it.each([
    ['refuses', { clipboard: { writeText: () => Promise.reject(new Error('no')) } }],
    ['has no clipboard to give, as on a page without encryption', {}],
  ])('has the text there to be selected where the browser %s', async (_, navigator) => {
    vi.stubGlobal('navigator', navigator);
    const use = await probe(useCopy);
    await use.does(({ copy }) => copy('27 dBm'));
    expect(use.now().copied).toEqual({ state: 'refused', text: '27 dBm' });
  });

  it('tells of the text that was asked for last', async () => {
    const waiting = slowClipboard();
    const use = await probe(useCopy);
    await use.does(({ copy }) => void [copy('first'), copy('second')]);
    await use.does(() => waiting[1]?.allow());
    await use.does(() => waiting[0]?.allow());
    expect(use.now().copied).toEqual({ state: 'done', text: 'second' });
  });

  it('tells nothing any more of what was forgotten meanwhile', async () => {
    const waiting = slowClipboard();
    const use = await probe(useCopy);
    await use.does(({ copy }) => void copy('old'));
    await use.does(({ forget }) => forget());
    await use.does(() => waiting[0]?.allow());
    expect(use.now().copied).toEqual({ state: 'idle', text: '' });
    await use.does(({ forget }) => forget('too long'));
    expect(use.now().copied).toEqual({ state: 'idle', text: 'too long' });
  });
});
