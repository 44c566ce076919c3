import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type BegunPaper, begunOf } from '../../src/practice/begun-paper.ts';
import { type LeftPaper, leftPapers } from '../../src/practice/left-papers.ts';
import { type OwnPaper, ownPaper } from '../../src/practice/own-paper.ts';
import type { PaperState } from '../../src/practice/paper-state.ts';
import { storage } from '../store/any-storage.ts';
import { allSittings, choiceSitting } from './sittings.ts';

beforeEach(() => {
  vi.stubGlobal('localStorage', storage());
});
afterEach(() => vi.unstubAllGlobals());

/** The paper with a number and one answer, as it is kept. */
function paper(seed: number, given: string): BegunPaper {
  const table: PaperState = {
    sittings: allSittings,
    given: new Map([[choiceSitting.id, given]]),
    begunMs: 0,
    hasClock: false,
    handed: undefined,
  };
  return begunOf(table, { seed, length: 5, topics: '' }, 1000);
}
const keep = (tab: OwnPaper, kept: BegunPaper) => tab.keep(JSON.stringify(kept));
const left = (): readonly BegunPaper[] => leftPapers().left.map((each) => each.paper);
const onlyLeft = (): LeftPaper => {
  const [one, ...more] = leftPapers().left;
  if (one === undefined || more.length > 0) throw new Error('wish one paper that was left');
  return one;
};

describe('papers of two tabs', () => {
  it('are two, though both were begun with the same number', () => {
    const [one, two] = [ownPaper(), ownPaper()];
    expect([keep(one, paper(7, 'a')), keep(two, paper(7, 'b'))]).toEqual(['kept', 'kept']);
    expect(keep(one, paper(7, 'c'))).toBe('kept');
    expect(left()).toEqual(expect.arrayContaining([paper(7, 'c'), paper(7, 'b')]));
    expect(left()).toHaveLength(2);
  });

  it('end each for itself', () => {
    const [one, two] = [ownPaper(), ownPaper()];
    keep(one, paper(7, 'a'));
    keep(two, paper(8, 'b'));
    one.end();
    expect(left()).toEqual([paper(8, 'b')]);
    expect(two.standing()).toBe('kept');
  });
});

describe('one paper in two tabs', () => {
  let [one, two] = [ownPaper(), ownPaper()];
  beforeEach(() => {
    [one, two] = [ownPaper(), ownPaper()];
    keep(one, paper(7, 'a'));
    two.take(onlyLeft());
    keep(two, paper(7, 'b'));
  });

  it('is the one’s that went on with it last; the other is told and writes nothing over it', () => {
    expect(one.standing()).toBe('changed');
    expect(keep(one, paper(7, 'c'))).toBe('changed');
    expect(keep(one, paper(7, 'd')), 'however often').toBe('changed');
    expect(two.standing()).toBe('kept');
    expect(left()).toEqual([paper(7, 'b')]);
  });

  it('can be gone on with as the other has it, and then the other is told', () => {
    expect(one.others()).toEqual(paper(7, 'b'));
    expect(keep(one, paper(7, 'c'))).toBe('kept');
    expect(two.standing()).toBe('changed');
    expect(left()).toEqual([paper(7, 'c')]);
  });

  it('can become two, so that nothing is lost', () => {
    one.apart();
    expect(keep(one, paper(7, 'c'))).toBe('kept');
    expect(left()).toEqual(expect.arrayContaining([paper(7, 'b'), paper(7, 'c')]));
    expect(two.standing()).toBe('kept');
  });

  it('is not taken from the other by handing in what is here', () => {
    one.end();
    expect(left()).toEqual([paper(7, 'b')]);
  });

  it('does not come back once the other has handed it in, unless as a paper of its own', () => {
    two.end();
    expect(one.standing()).toBe('gone');
    expect(keep(one, paper(7, 'c'))).toBe('gone');
    expect(one.others()).toBeUndefined();
    expect(left()).toEqual([]);
    one.apart();
    expect(keep(one, paper(7, 'c'))).toBe('kept');
    expect(left()).toEqual([paper(7, 'c')]);
  });
});

describe('what was left', () => {
  it('is counted where it cannot be read, stays as it lies, and goes with its tab alone', () => {
    const browser = storage({
      'practice:paper': JSON.stringify(paper(3, 'a')),
      'practice:paper:a1': '{"version":1,',
      'practice:paper:b2': JSON.stringify({ ...paper(4, 'a'), version: 2 }),
    });
    vi.stubGlobal('localStorage', browser);
    expect(leftPapers()).toEqual({
      left: [{ id: '', text: browser.getItem('practice:paper'), paper: paper(3, 'a') }],
      unreadable: 2,
    });
    const tab = ownPaper();
    tab.take(onlyLeft());
    tab.end();
    expect(leftPapers()).toEqual({ left: [], unreadable: 2 });
    expect(browser.getItem('practice:paper:a1')).toBe('{"version":1,');
  });

  it('of another tab is not taken where it cannot be read', () => {
    const tab = ownPaper();
    keep(tab, paper(7, 'a'));
    const [key = ''] = (localStorage as unknown as ReturnType<typeof storage>).kept.keys();
    localStorage.setItem(key, 'of a later version');
    expect(tab.others()).toBeUndefined();
    expect(keep(tab, paper(7, 'b'))).toBe('changed');
  });

  it('has no standing before anything is kept', () => {
    expect(ownPaper().standing()).toBeUndefined();
  });
});
