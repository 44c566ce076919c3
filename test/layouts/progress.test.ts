import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startLearnProgress } from '../../src/layouts/learn-progress.ts';
import { learnStrings } from '../../src/layouts/learn-strings.ts';
import { startLessonProgress } from '../../src/layouts/lesson-progress.ts';
import { strings } from '../../src/layouts/strings.ts';
import { keepProgress, keptProgress } from '../../src/store/progress.ts';
import { stubWindow } from '../hooks/window.ts';
import { refusing, storage } from '../store/any-storage.ts';

const ID = 'decibels/ratios-that-add';

let events: EventTarget;
beforeEach(() => {
  events = stubWindow();
  vi.stubGlobal('localStorage', storage());
  vi.stubGlobal('confirm', () => true);
});
afterEach(() => vi.unstubAllGlobals());

const button = () => Object.assign(new EventTarget(), { textContent: '', disabled: false });
const press = (of: EventTarget): boolean => of.dispatchEvent(new Event('click'));
/** Another tab has kept something, or the page has come back. */
const hear = (): boolean => events.dispatchEvent(new Event('storage'));

/** The foot of a lesson. */
function lesson() {
  const [finish, told] = [button(), { textContent: '' }];
  startLessonProgress({
    dataset: { lesson: ID },
    querySelector: (selector: string) => (selector === 'button' ? finish : told),
  } as unknown as HTMLElement);
  return { finish, told };
}

/** The list of lessons, with one in it. */
function list() {
  const mark = { dataset: { lesson: ID }, textContent: '' };
  const [forget, told] = [button(), { textContent: '' }];
  startLearnProgress({
    querySelectorAll: () => [mark],
    querySelector: (selector: string) => (selector === '[data-forget]' ? forget : told),
  } as unknown as ParentNode);
  return { mark, forget, told };
}

describe('the foot of a lesson', () => {
  it('notes that it was begun, and is finished and not, as the reader says', () => {
    const { finish, told } = lesson();
    expect(keptProgress(ID)).toBe('begun');
    press(finish);
    expect(keptProgress(ID)).toBe('finished');
    expect([finish.textContent, told.textContent]).toEqual([strings.unfinish, strings.progress.finished]);
    press(finish);
    expect(keptProgress(ID)).toBe('begun');
    expect([finish.textContent, told.textContent]).toEqual([strings.finish, '']);
  });

  it('follows what another tab or the list of lessons says', () => {
    const { finish } = lesson();
    keepProgress(ID, 'finished');
    hear();
    expect(finish.textContent).toBe(strings.unfinish);
    localStorage.removeItem(`lesson:${ID}`);
    hear();
    expect(finish.textContent).toBe(strings.finish);
    press(finish);
    expect(keptProgress(ID)).toBe('finished');
  });

  it('stays as it was said to be where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', refusing);
    const { finish, told } = lesson();
    press(finish);
    hear();
    expect(finish.textContent).toBe(strings.unfinish);
    expect(told.textContent).toContain(strings.refused);
  });
});

describe('the list of lessons', () => {
  it('says how far the reader is, and forgets it when asked', () => {
    keepProgress(ID, 'finished');
    const { mark, forget, told } = list();
    expect(mark.textContent).toBe(strings.progress.finished);
    expect(told.textContent).toBe(learnStrings.count(1, 1));
    press(forget);
    expect(keptProgress(ID)).toBeUndefined();
    expect([mark.textContent, told.textContent, forget.disabled]).toEqual(['', learnStrings.forgotten, true]);
  });

  it('follows what was read meanwhile', () => {
    const { mark, forget, told } = list();
    expect([told.textContent, forget.disabled]).toEqual([learnStrings.none, true]);
    keepProgress(ID, 'begun');
    hear();
    expect(mark.textContent).toBe(strings.progress.begun);
    expect([told.textContent, forget.disabled]).toEqual([learnStrings.count(0, 1), false]);
  });

  it('says where the browser keeps nothing, and goes on saying so', () => {
    vi.stubGlobal('localStorage', refusing);
    const { told } = list();
    hear();
    expect(told.textContent).toBe(strings.refused);
  });
});
