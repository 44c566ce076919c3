import { afterEach, describe, expect, it, vi } from 'vitest';
import { keyWords, saidKeys } from '../../src/stage/strings.ts';
import { nameOfSlide, speak, stepTold } from '../../src/stage/told.ts';

interface Slide {
  readonly label?: string;
  /** Title of the frame that a borrowed step is shown in. */
  readonly frame?: string;
  readonly text?: string;
}
/** As much of a slide as is looked at. */
const slide = ({ label, frame, text = '' }: Slide): Element =>
  ({
    getAttribute: (name: string) => (name === 'aria-label' ? (label ?? null) : null),
    querySelector: (selector: string) =>
      selector === 'iframe' && frame !== undefined ? { title: frame } : null,
    textContent: text,
  }) as unknown as Element;

afterEach(() => vi.unstubAllGlobals());

describe('the step that is shown', () => {
  it('is told by its place and its title', () => {
    const slides = [
      slide({ label: 'A guess' }),
      slide({ label: 'One rung decides (1 of 2)', text: 'and more' }),
    ];
    expect(stepTold(slides, 0)).toBe('Step 1 of 2: A guess');
    expect(stepTold(slides, 1)).toBe('Step 2 of 2: One rung decides (1 of 2)');
  });

  it('of a talk has the title of the page in its frame, and one that is missing says so', () => {
    expect(nameOfSlide(slide({ frame: 'The band along the chain' }))).toBe('The band along the chain');
    expect(nameOfSlide(slide({ text: ' The step is not on this site. ' }))).toBe(
      'The step is not on this site.',
    );
    expect(nameOfSlide(undefined)).toBe('');
  });
});

describe('what was done', () => {
  it('is put where it is spoken, and lost where there is no such place', () => {
    const place = { textContent: '' };
    vi.stubGlobal('document', { querySelector: () => place });
    speak('The wall is blank.');
    expect(place.textContent).toBe('The wall is blank.');
    vi.stubGlobal('document', { querySelector: () => null });
    expect(() => speak('Nobody hears.')).not.toThrow();
  });
});

describe('the keys in the help', () => {
  it('are each a word, a letter or a digit as they are spoken', () => {
    for (const key of keyWords.flatMap(({ keys }) => keys))
      expect(saidKeys[key] ?? key).toMatch(/^[A-Za-z0-9 ]+$/);
  });
});
