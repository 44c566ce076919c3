import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startCompose } from '../../src/stage/compose.ts';
import { composeStrings as strings } from '../../src/stage/compose-strings.ts';
import { MOST_PARTS, talkQuery } from '../../src/stage/talk.ts';
import { keepTalk, keptTalk } from '../../src/store/talk.ts';
import { storage } from '../store/any-storage.ts';

/** As much of an element as the page asks for. */
class FakeElement extends EventTarget {
  readonly dataset: Record<string, string> = {};
  textContent = '';
  hidden = false;
  href = '';
  value = '';
  files: readonly unknown[] = [];
  children: readonly unknown[] = [];
  readonly appended: unknown[] = [];
  append = (...more: unknown[]): void => void this.appended.push(...more);
  setAttribute = (): void => undefined;
  focus = (): void => undefined;
  replaceChildren = (...children: unknown[]): void => {
    this.children = children;
  };
}

const STEP = 'decibels.ratios-that-add.guess';
let places: Map<string, FakeElement>;
const at = (selector: string): FakeElement => {
  const found = places.get(selector) ?? new FakeElement();
  places.set(selector, found);
  return found;
};
let pick: FakeElement;
let events: EventTarget;

beforeEach(() => {
  places = new Map();
  pick = new FakeElement();
  Object.assign(pick.dataset, { part: STEP, name: 'Guess first' });
  vi.stubGlobal('localStorage', storage());
  events = new EventTarget();
  vi.stubGlobal('addEventListener', events.addEventListener.bind(events));
  vi.stubGlobal('location', { search: '' });
  vi.stubGlobal('document', {
    querySelector: at,
    querySelectorAll: (selector: string) => (selector === '[data-part]' ? [pick] : []),
    createElement: () => new FakeElement(),
  });
});
afterEach(() => vi.unstubAllGlobals());

const press = (element: FakeElement): boolean => element.dispatchEvent(new Event('click'));
const said = (): string => at('#talk-says').textContent;

describe('a talk that is put together', () => {
  it('takes as many steps as fit, and says where no more do', () => {
    startCompose();
    for (let step = 0; step < MOST_PARTS; step++) press(pick);
    expect(said()).toBe(strings.added('Guess first'));
    press(pick);
    expect(said()).toBe(strings.tooMany(MOST_PARTS));
    expect(at('#talk-list').children).toHaveLength(MOST_PARTS);
  });

  it('says where its file could not be made, or read', async () => {
    const createObjectURL = vi.spyOn(URL, 'createObjectURL').mockImplementation(() => {
      throw new Error('no room');
    });
    startCompose();
    press(pick);
    press(at('#talk-save'));
    await expect.poll(said).toBe(strings.noFile);
    expect(createObjectURL).toHaveBeenCalledOnce();
    createObjectURL.mockRestore();
    press(pick);
    const field = at('#talk-open');
    field.files = [{ size: 3, arrayBuffer: undefined }];
    field.dispatchEvent(new Event('change'));
    await expect.poll(said).toBe(strings.noFile);
  });
});

describe('a talk that two windows put together', () => {
  const OTHER = 'examples.two-pads-into-a-receiver.answer';
  /** What another window keeps, and this one hears of. */
  const elsewhere = (parts: readonly string[], isHeard = true): void => {
    keepTalk(parts);
    if (isHeard) events.dispatchEvent(new Event('storage'));
  };
  const length = (): number => at('#talk-list').children.length;
  const way = (): unknown => at('#talk-says').appended.find((node) => node instanceof FakeElement);

  it('has the steps of both', () => {
    startCompose();
    press(pick);
    elsewhere([STEP, OTHER]);
    expect(said()).toBe(strings.elsewhere(2));
    expect(length()).toBe(2);
    press(pick);
    expect(keptTalk()).toEqual([STEP, OTHER, STEP]);
  });

  it('has them also where this window did not hear of the other', () => {
    startCompose();
    elsewhere([OTHER], false);
    press(pick);
    expect(keptTalk()).toEqual([OTHER, STEP]);
  });

  it('can be had as it stood here', () => {
    startCompose();
    press(pick);
    elsewhere([]);
    expect(length()).toBe(0);
    expect(way()).toMatchObject({ href: talkQuery([STEP]), textContent: strings.before });
  });

  it('is not told of what it keeps itself', () => {
    startCompose();
    press(pick);
    elsewhere([STEP]);
    expect(said()).toBe(strings.added('Guess first'));
  });

  it('stays as an address names it, whatever is kept beside it', () => {
    vi.stubGlobal('location', { search: talkQuery([OTHER]) });
    startCompose();
    elsewhere([STEP, STEP]);
    expect(length(), 'what the address names').toBe(1);
  });

  it('takes the place of the kept one when a talk from an address is changed, and that is told with the way back', () => {
    keepTalk([STEP, STEP]);
    vi.stubGlobal('location', { search: talkQuery([OTHER]) });
    startCompose();
    press(pick);
    expect(keptTalk()).toEqual([OTHER, STEP]);
    expect(said()).toBe(`${strings.added('Guess first')} ${strings.instead}`);
    expect(way()).toMatchObject({ href: talkQuery([STEP, STEP]) });
    press(pick);
    expect(said(), 'once').toBe(strings.added('Guess first'));
  });
});
