import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startCompose } from '../../src/stage/compose.ts';
import { composeStrings as strings } from '../../src/stage/compose-strings.ts';
import { MOST_PARTS } from '../../src/stage/talk.ts';
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
  append = (): void => undefined;
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

beforeEach(() => {
  places = new Map();
  pick = new FakeElement();
  Object.assign(pick.dataset, { part: STEP, name: 'Guess first' });
  vi.stubGlobal('localStorage', storage());
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
