import { describe, expect, it } from 'vitest';
import { partsOf, questionsIn } from '../../src/lessons/source/parts.ts';
import { plainText } from '../../src/lessons/source/plain-text.ts';
import { seenSource, tagsIn } from '../../src/lessons/source/tags.ts';
import { textOfValue } from '../../src/lessons/values.ts';

describe('the tags of a source', () => {
  it('are found with what they say', () => {
    const [step, given, close] = tagsIn(
      '<Step id="a" title="x > y">\n<Given\n  value={0.5} unit="dB" plusMinus /> a < b </Step>',
    );
    expect(step).toMatchObject({
      name: 'Step',
      isClosing: false,
      attributes: { id: 'a', title: 'x > y' },
      from: 0,
    });
    expect(given?.attributes).toEqual({ value: 0.5, unit: 'dB', plusMinus: true });
    expect(close).toMatchObject({ name: 'Step', isClosing: true });
  });

  it('do not stand in front matter and comments', () => {
    expect(seenSource('---\ntitle: <Value of="a" />\n---\n{/* <Word of="b"> */}text')).toBe('\ntext');
  });
});

describe('the plain text of a source', () => {
  it.each([
    ['A **bold** and *leaning* `code`, [a link](/learn/#a).', 'A bold and leaning code, a link.'],
    ['- one\n- two\n\n1. three', 'one two three'],
    ['| a | b |\n| --- | :-: |\n| 1 | 2 |', 'a b 1 2'],
    ['<Word of="pad">the pad</Word>, <em>so</em>', 'the pad, so'],
    ['<Given value={0.5} unit="dB" decimals={1} plusMinus />', '±0.5\u00a0dB'],
    ['<Given value={27} unit="dBm" />', '27\u00a0dBm'],
    ['<TryState state="a=1&v=1" text="try it" /> now', 'try it now'],
    ['<GuessFirst id="readings-three" /><ChainFigure preset="club" build />', ''],
    ['snake_case and _leaning_ k = 2', 'snake_case and leaning k = 2'],
  ])('%s', (mdx, text) => expect(plainText(mdx).replace(/ +(?=,)/g, '')).toBe(text));

  it('has the numbers that the page computes', () => {
    expect(plainText('It is <Value of="chain.level" />.')).toBe(`It is ${textOfValue('chain.level')}.`);
    expect(plainText('<Mistake what="Adding" costs="chain.level" state="v=1">Tempting.</Mistake>')).toBe(
      `Adding: ${textOfValue('chain.level')}. Tempting.`,
    );
  });

  it('has what a formula answers in words', () => {
    expect(plainText('<Formula id="standardDeviation" />')).toMatch(/^[A-Z].*\.$/);
  });
});

const lesson = `---
title: t
---

<Step id="guess" title="Guess">

<GuessFirst id="q-one" />

</Step>

<Step id="why" title="Why">

Because. <CheckYourself id="q-two" />

</Step>

<More>

After all.

<CheckYourself id="q-three" />

<Takeaways>

- Keep it.

</Takeaways>

<Sources>A book.</Sources>

</More>
`;

describe('the parts of a lesson', () => {
  it('are its steps and what follows them, each with its place', () => {
    expect(partsOf(lesson)).toEqual([
      { at: 'why', title: 'Why', text: 'Because.' },
      { at: '', title: '', text: 'After all.' },
      { at: 'remember', title: 'What to remember', text: 'Keep it.' },
      { at: 'sources', title: 'Where this comes from', text: 'A book.' },
    ]);
  });

  it('hold its questions', () => {
    expect([...questionsIn(lesson)]).toEqual([
      ['q-one', 'guess'],
      ['q-two', 'why'],
      ['q-three', ''],
    ]);
  });
});
