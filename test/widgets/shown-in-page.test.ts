import { afterEach, describe, expect, it, vi } from 'vitest';
import { chooseDecimal, DECIMAL_KEY, keptDecimal } from '../../src/store/decimal.ts';
import { isolated } from '../../src/text/isolate.ts';
import { type ReadSpec, readQuantity } from '../../src/text/read/quantity.ts';
import { followSign, inPage } from '../../src/widgets/parts/shown-in-page.ts';

/** A text of a page; `within` is what of its surroundings a selector may find. */
class FakeText {
  data: string;
  readonly within: string;
  constructor(data: string, within = '') {
    this.data = data;
    this.within = within;
  }
  get parentElement() {
    return { closest: (wish: string) => (this.within && wish.includes(this.within) ? {} : null) };
  }
}

/** What is said of a text that cannot be used. */
function problemOf(text: string, spec: ReadSpec): string {
  const read = readQuantity(text, spec);
  if (read.ok) throw new Error(`problemOf: wish a problem, got ${read.value}`);
  return read.problem;
}

/** As much of a browser as is asked for. */
function browser(texts: readonly FakeText[], pathname = '/learn/') {
  const kept = new Map<string, string>();
  const heard: (() => void)[] = [];
  let changed: (changes: readonly unknown[]) => void = () => undefined;
  const observed: object[] = [];
  const taken: string[][] = [];
  const main = { texts, dataset: {} };
  vi.stubGlobal('Text', FakeText);
  vi.stubGlobal('NodeFilter', { SHOW_TEXT: 4 });
  vi.stubGlobal('location', { pathname });
  vi.stubGlobal('localStorage', { getItem: (key: string) => kept.get(key) ?? null });
  vi.stubGlobal('addEventListener', (_: string, listen: () => void) => heard.push(listen));
  vi.stubGlobal('document', {
    querySelector: () => main,
    createTreeWalker: (root: typeof main | FakeText) => {
      const nodes = root instanceof FakeText ? [] : [...root.texts];
      return { currentNode: root, nextNode: () => nodes.shift() ?? null };
    },
  });
  vi.stubGlobal(
    'MutationObserver',
    class {
      constructor(listen: typeof changed) {
        changed = listen;
      }
      observe(root: object) {
        observed.push(root);
      }
      takeRecords() {
        taken.push(texts.map(({ data }) => data));
        return [];
      }
    },
  );
  return {
    choose: (sign: string) => {
      kept.set(DECIMAL_KEY, sign);
      for (const listen of heard) listen();
    },
    redraw: (text: FakeText, data: string) => {
      text.data = data;
      changed([{ target: text, addedNodes: [] }]);
    },
    add: (text: FakeText) => changed([{ target: main, addedNodes: [text] }]),
    observed,
    taken,
  };
}

afterEach(() => {
  vi.unstubAllGlobals();
  // what is chosen holds for a visit
  chooseDecimal('point');
});

describe('a text of a page', () => {
  it('has its numbers with a comma', () => {
    expect(inPage('10 lg 2.5 = 3.98 dB.')).toBe('10 lg 2,5 = 3,98 dB.');
    expect(inPage('27.10\u00a0dBm ±0.69\u00a0dB')).toBe('27,10\u00a0dBm ±0,69\u00a0dB');
  });

  it('has them beside clauses too', () => {
    expect(inPage('up to 3.0 mW off (JCGM 101, 8.1), where 5.0 mW is allowed')).toBe(
      'up to 3,0 mW off (JCGM 101, 8.1), where 5,0 mW is allowed',
    );
    expect(inPage('By the rule of GUM 4.2.3 it is 0.9. With more, 0.8.')).toBe(
      'By the rule of GUM 4.2.3 it is 0.9. With more, 0,8.',
    );
  });

  it('keeps the numbers of clauses, and addresses', () => {
    for (const text of [
      'Correction (VIM, 2012, 2.53).',
      'VIM (2012) 2.53 (number from memory)',
      'JCGM 101, 9.4: comparison loss of a power meter',
      'CEPT T/R 61-02, annex 6, 1.9, 6.3',
      'https://club.example/?v=1.5',
      'at level AA of the guidelines, WCAG 2.2',
      'ITU Radio Regulations, Article 1, 1.157 (number from memory)',
      'SI Brochure, version 3.01',
    ])
      expect(inPage(text)).toBe(text);
  });
});

describe('what a reader typed', () => {
  it('keeps its point in a name, beside numbers that have a comma', () => {
    expect(inPage(`${isolated('Pad 1.5')} adds ±0.25\u00a0dB`)).toBe(
      '\u2068Pad 1.5\u2069 adds ±0,25\u00a0dB',
    );
    expect(inPage(`${isolated('at 7.03')}, ${isolated('at 7.10')}: 0.5\u00a0dB`)).toBe(
      '\u2068at 7.03\u2069, \u2068at 7.10\u2069: 0,5\u00a0dB',
    );
  });

  it('keeps it where a sentence says what is wrong with it', () => {
    const most = { kind: 'level', min: -60, max: 60.5, decimals: 1 } as const;
    expect(inPage(problemOf('61.5', most))).toBe(
      '“61.5” is above the largest value accepted here, 60,5\u00a0dBm.',
    );
  });

  it('is told to be written otherwise with the very signs that it needs', () => {
    const told = problemOf('1,234', { kind: 'level', min: -60, max: 60, decimals: 1 });
    expect(inPage(told)).toBe('“1,234” can mean 1.234 or 1234: write 1.234 or 1234.');
  });
});

describe('a list of bare numbers', () => {
  it('is parted by semicolons, as where each is written with a comma', () => {
    expect(inPage('Readings: 26.84, 27.02, −1.50 dBm.')).toBe('Readings: 26,84; 27,02; −1,50 dBm.');
    expect(inPage('It is 2.5, which 3 of 4 say; 0.5 dB, 0.7 dB')).toBe(
      'It is 2,5, which 3 of 4 say; 0,5 dB, 0,7 dB',
    );
  });
});

describe('a page whose reader has chosen a comma', () => {
  it('shows its numbers so, and those that are drawn anew', () => {
    const texts = [new FakeText('It is 0.69 dB.'), new FakeText('513 mW')];
    const page = browser(texts);
    page.choose('comma');
    followSign(keptDecimal);
    expect(texts.map(({ data }) => data)).toEqual(['It is 0,69 dB.', '513 mW']);
    const [first] = texts as [FakeText, FakeText];
    page.redraw(first, 'It is 0.70 dB.');
    expect(first.data).toBe('It is 0,70 dB.');
    const late = new FakeText('1.5');
    page.add(late);
    expect(late.data).toBe('1,5');
  });

  it('leaves what is copied or spoken, and what was typed', () => {
    const places = [
      'textarea',
      'title',
      'desc',
      'bdi',
      '.visually-hidden',
      '.katex-mathml',
      '.sources',
      '.copy-forms',
    ];
    const texts = places.map((place) => new FakeText('2.5', place));
    browser(texts).choose('comma');
    followSign(keptDecimal);
    expect(texts.map(({ data }) => data)).toEqual(texts.map(() => '2.5'));
  });

  it('has it as it was written when a point is chosen again, and goes on with that', () => {
    const text = new FakeText('0.69 dB, not 1,5');
    const page = browser([text]);
    page.choose('comma');
    followSign(keptDecimal);
    expect(text.data).toBe('0,69 dB, not 1,5');
    page.choose('point');
    expect(text.data).toBe('0.69 dB, not 1,5');
    page.redraw(text, '0.70 dB');
    expect(text.data).toBe('0.70 dB');
    page.choose('comma');
    expect(text.data).toBe('0,70 dB');
  });

  it('is followed once, however often that is asked for', () => {
    const page = browser([]);
    followSign(keptDecimal);
    followSign(keptDecimal);
    expect(page.observed).toHaveLength(1);
  });

  it('is not told anew of what was done by itself', () => {
    const text = new FakeText('0.69 dB');
    const page = browser([text]);
    page.choose('comma');
    followSign(keptDecimal);
    page.redraw(text, '0.70 dB');
    expect(page.taken).toEqual([['0,70 dB']]);
  });

  it.each(['/bench/', '/bench/borrow/', '/reference/tables/', '/about/'])('follows at %s', (path) => {
    const text = new FakeText('2.5');
    browser([text], path).choose('comma');
    followSign(keptDecimal);
    expect(text.data).toBe('2,5');
  });

  it.each(['/practice/paper/', '/search/', '/reference/checks/gum/'])('is left to itself at %s', (path) => {
    const text = new FakeText('2.5');
    const page = browser([text], path);
    page.choose('comma');
    followSign(keptDecimal);
    expect(text.data).toBe('2.5');
    expect(page.observed).toHaveLength(0);
  });
});
