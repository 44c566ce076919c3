import { afterEach, describe, expect, it, vi } from 'vitest';
import { clockText, spanText } from '../../src/stage/clock-text.ts';
import { isTold, lineName, openLine, type Told, windowLine } from '../../src/stage/line.ts';

describe('what is told over the line', () => {
  it('is a step with its wall, or a question', () => {
    expect([{ step: 0, blank: true }, { asks: true }].map(isTold)).toEqual([true, true]);
  });

  it.each([[undefined], [null], ['step'], [{}], [{ step: 1 }], [{ step: 0.5, blank: false }], [{ asks: 1 }]])(
    'is not %j',
    (data) => expect(isTold(data)).toBe(false),
  );
});

describe('the line', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('has one name for a wall and its notes, and another for another talk', () => {
    const name = (search: string, pathname = '/stage/a/'): string => lineName({ pathname, search });
    expect(name('?notes=')).toBe(name(''));
    expect(name('?notes')).toBe(name(''));
    expect(name('', '/stage/b/')).not.toBe(name(''));
  });

  it('of a step within a talk is that of its place there, the same for the wall and for the notes', () => {
    const at = (search: string, talk: string): string => {
      vi.stubGlobal('location', { pathname: '/stage/learn/a/b/', search });
      vi.stubGlobal('parent', { location: { pathname: '/stage/talk/', search: talk } });
      return windowLine();
    };
    const first = at('?part=1', '?parts=a.b.c~a.b.c');
    expect(at('?part=1&notes', '?parts=a.b.c~a.b.c&notes=')).toBe(first);
    expect(at('?part=2', '?parts=a.b.c~a.b.c')).not.toBe(first);
    expect(at('?part=1', '?parts=a.b.c')).not.toBe(first);
    expect(at('', '')).toBe(lineName({ pathname: '/stage/learn/a/b/', search: '' }));
  });

  it('carries what one window tells to the other and not back', async () => {
    const heard: Told[] = [];
    const own: Told[] = [];
    openLine('a-talk', isTold, (told) => heard.push(told));
    openLine('another', isTold, (told) => own.push(told));
    const wall = openLine('a-talk', isTold, (told) => own.push(told));
    wall.tell({ step: 3, blank: false });
    await vi.waitFor(() => expect(heard).toEqual([{ step: 3, blank: false }]));
    expect(own).toEqual([]);
  });

  it('is silent where the browser has none', () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    expect(() => openLine('a-talk', isTold, () => undefined).tell({ asks: true })).not.toThrow();
  });
});

describe('the clock of the notes', () => {
  it('says the time of day and how long the talk has gone on', () => {
    expect([clockText(19, 5), clockText(0, 0)]).toEqual(['19:05', '00:00']);
    expect([0, 999, 61_000, 4_980_000, -5].map(spanText)).toEqual(['0:00', '0:00', '1:01', '83:00', '0:00']);
  });
});
