import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Marked } from '../../src/practice/answering.ts';
import type { Around, Shown } from '../../src/practice/facts.ts';
import Practice from '../../src/practice/Practice.tsx';
import type { PaperState } from '../../src/practice/paper-state.ts';
import { AroundContext } from '../../src/practice/views/context.ts';
import { PaperReview } from '../../src/practice/views/PaperReview.tsx';
import { PrintedAnswers } from '../../src/practice/views/PrintedPaper.tsx';
import { RoundSum } from '../../src/practice/views/RoundSum.tsx';
import { allSittings, choiceSitting, orderSitting, placeSitting, typedSitting } from './sittings.ts';

const around: Around = {
  root: '/club/',
  lessons: { 'decibels/ratios-that-add': 'Ratios that add' },
  questions: allSittings.map(({ id, topic }) => ({ id, topic })),
  topics: [{ id: 'ratios', title: 'Ratios and levels', words: 'Decibels and dBm.' }],
};

const page = (shown: Shown): string => render(<Practice {...around} {...shown} />);

/** What is read, without tags. */
const words = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

describe('the page of one question, before any script', () => {
  it.each(allSittings)('has the question, its controls and the worked answer: $kind', (sitting) => {
    const html = page({ page: 'question', sitting });
    expect(html).toContain(`<legend>${sitting.stem}</legend>`);
    expect(html).toMatch(/<details class="answer"><summary>The worked answer<\/summary>/);
    for (const line of sitting.worked) expect(words(html)).toContain(line);
    expect(html).toContain('<a href="/club/learn/decibels/ratios-that-add/">Ratios that add</a>');
    expect(html, 'nothing is marked yet').not.toContain('Right.');
  });

  it('has a choice as buttons of one group, each labelled', () => {
    const html = page({ page: 'question', sitting: choiceSitting });
    const names = [...html.matchAll(/type="radio" name="([^"]+)"/g)].map(([, name]) => name);
    expect(names).toHaveLength(3);
    expect(new Set(names).size).toBe(1);
  });

  it('has a typed answer with its unit and how near it must be', () => {
    const html = words(page({ page: 'question', sitting: typedSitting }));
    expect(html).toContain('dBm within 0.1 dB');
  });

  it('has an order with a way up and down for each item that has one', () => {
    const html = page({ page: 'question', sitting: orderSitting });
    expect(html.match(/aria-label="Move (up|down): /g)).toHaveLength(6);
    const ends = [...html.matchAll(/<button[^>]*disabled[^>]*aria-label="([^"]+)"/g)].map(
      ([, label]) => label,
    );
    expect(ends).toEqual(['Move up: 2 watts', 'Move down: 3 watts']);
    expect(words(html)).toMatch(/smallest first .* largest last/);
  });

  it('has a figure with a name, and every place in words beside it', () => {
    const html = page({ page: 'question', sitting: placeSitting });
    expect(html).toContain('role="img" aria-label="A ruler of decibels"');
    for (const text of ['at A, near 3 dB', 'at B, at 10 dB']) expect(words(html)).toContain(text);
  });

  it('keeps no style attribute, which the policy would refuse', () => {
    for (const sitting of allSittings) expect(page({ page: 'question', sitting })).not.toMatch(/\sstyle=/);
  });
});

describe('a worksheet, before any script', () => {
  const html = page({ page: 'worksheet', sittings: allSittings });

  it('is the first paper, every question in a form for a pencil', () => {
    expect(words(html)).toContain('Paper 1');
    for (const { stem } of allSittings) expect(words(html)).toContain(stem);
    expect(words(html)).toContain('1: smallest first; 3: largest last');
  });

  it('has no answers unless they are asked for', () => {
    expect(words(html)).not.toContain('Answers to paper 1');
    expect(html).not.toContain('Then the other');
    const answers = words(render(<PrintedAnswers seed={1} sittings={allSittings} />));
    expect(answers).toContain('Answers to paper 1');
    expect(answers).toContain('Then the other: 7 dBm.');
  });
});

describe('pages that only script makes use of', () => {
  it.each(['revision', 'paper'] as const)('are marked as such: %s', (name) => {
    expect(page({ page: name })).toMatch(/^<section class="round needs-script"/);
  });

  it('the ways in lead to every topic without script as well', () => {
    const html = page({ page: 'home' });
    expect(html).toContain('<a href="/club/practice/ratios/">Ratios and levels</a>');
  });
});

describe('what a round came to', () => {
  const went = (grade: 'right' | 'unsure' | 'wrong', again = false) => ({
    id: 'q',
    grade,
    mistake: '',
    again,
  });
  it('is a count of first tries, without praise or blame', () => {
    const state = {
      queue: [],
      at: 0,
      went: [went('right'), went('unsure'), went('wrong'), went('right', true)],
    };
    const html = render(<RoundSum state={state} onMore={() => undefined} />);
    expect(words(html)).toContain('2 of 3 right at the first try, 1 of them unsure.');
    const [, sum] = /<h2[^>]*aria-describedby="([^"]+)"/.exec(html) ?? [];
    expect(html, 'the heading, which has the focus, brings it').toContain(`<p id="${sum}">2 of 3 right`);
  });
});

describe('the review of a paper', () => {
  const paper: PaperState = {
    sittings: [choiceSitting, typedSitting],
    given: new Map([[choiceSitting.id, 'a']]),
    begunMs: 0,
    hasClock: true,
    handed: undefined,
  };
  const marks = new Map<string, Marked>([
    [choiceSitting.id, { outcome: 'wrong', reply: 'The pad was left out.', misconception: 'link-left-out' }],
    [typedSitting.id, { outcome: 'unread', reply: 'Nothing is typed yet.', misconception: undefined }],
  ]);
  const review = (change: Partial<PaperState> = {}, marked = marks): string =>
    render(
      <AroundContext.Provider value={around}>
        <PaperReview
          paper={{ ...paper, ...change }}
          wish={{ seed: 7, length: 5, topics: '' }}
          handed={{ atMs: 10 * 60_000, marks: marked }}
          onAgain={() => undefined}
        />
      </AroundContext.Provider>,
    );
  const text = words(review());

  it('says how many are right, and that the clock had run out', () => {
    expect(text).toContain('Paper 7');
    expect(text).toContain('0 of 2 right.');
    expect(text).toContain('It took longer than the clock gave.');
    const [, id] = /<h2[^>]*aria-describedby="([^"]+)"/.exec(review()) ?? [];
    expect(review(), 'the heading, which has the focus, brings it').toMatch(
      new RegExp(`<p class="lead" id="${id}">0 of 2 right\\.`),
    );
  });

  it('says why what was typed is no answer', () => {
    const given = new Map([[typedSitting.id, 'seven']]);
    const reply = '“seven” is not a number.';
    const unread = new Map([
      [typedSitting.id, { outcome: 'unread', reply, misconception: undefined } as const],
    ]);
    expect(words(review({ sittings: [typedSitting], given }, unread))).toContain(
      `Not right. ${reply} Your answer: seven`,
    );
  });

  it('has every answer that was given beside the reply to it and the worked answer', () => {
    expect(text).toMatch(/Not right\. The pad was left out\. Your answer: 27 dBm/);
    expect(text).toMatch(/answer by typed\. Not answered\. The worked answer/);
    expect(text, 'once').not.toMatch(/Not right\.(?! The pad)/);
    expect(text.match(/The worked answer/g)).toHaveLength(2);
  });
});
