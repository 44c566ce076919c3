import { describe, expect, it } from 'vitest';
import { bankQuestion, bankQuestions } from '../../../src/questions/bank/index.ts';
import { type Given, mark } from '../../../src/questions/bank/mark.ts';
import { sitting } from '../../../src/questions/bank/sitting.ts';
import type { Sitting, TypedPayload } from '../../../src/questions/bank/types.ts';
import { sittingsOf } from './all.ts';
import { drawnOf } from './route.ts';

const typedOf = ({ payload }: Sitting): TypedPayload => {
  if (payload.kind !== 'typed') throw new TypeError('a typed answer was expected');
  return payload;
};
const kinds = (kind: string) =>
  bankQuestions()
    .filter((question) => question.kind === kind)
    .map((question) => [question.id, question] as const);
/** The first sitting of a question whose answer, as written, is this. */
function withAnswer(id: string, answer: string): Sitting {
  const found = sittingsOf(bankQuestion(id)).find(
    ({ payload }) => payload.kind === 'typed' && payload.answer === answer,
  );
  if (found === undefined) throw new RangeError(`${id}: no sitting has the answer ${answer}`);
  return found;
}
const outcome = (one: Sitting, given: Given): string => mark(one, given).outcome;

describe.each(kinds('typed'))('typing the answer of %s', (_, question) => {
  const all = sittingsOf(question);

  it('is right as written, with a comma, with a plain minus, and without its unit where that is the usual one', () => {
    for (const one of all) {
      const { answer, value, unit } = typedOf(one);
      expect(mark(one, answer)).toMatchObject({ outcome: 'right', reply: one.right });
      const plain = answer.replaceAll('\u00a0', ' ').replaceAll('\u2212', '-');
      expect(outcome(one, plain.replace('.', ','))).toBe('right');
      if (unit !== 'mW' && Math.abs(value) > 1e-3) expect(outcome(one, value.toPrecision(12))).toBe('right');
    }
  });

  it('is near for each known mistake, with the reply of that mistake', () => {
    for (const one of all)
      for (const slip of typedOf(one).near) {
        const scale = typedOf(one).unit === 'mW' ? 1000 : 1;
        const marked = mark(one, (scale * slip.value).toPrecision(12));
        expect(marked, `${slip.value}`).toMatchObject({
          outcome: 'near',
          reply: slip.reply,
          misconception: slip.misconception,
        });
      }
  });

  it('is near for the right number with its sign turned round or a factor off, unless that is another known mistake', () => {
    for (const one of all) {
      const { value, unit } = typedOf(one);
      const logarithmic = unit === 'dB' || unit === 'dBm';
      const scale = unit === 'mW' ? 1000 : 1;
      const off = logarithmic ? value + 10 : value * 10;
      expect(outcome(one, (scale * off).toPrecision(12))).toBe('near');
      if (Math.abs(value) > 0.5) expect(outcome(one, (-scale * value).toPrecision(12))).toBe('near');
    }
  });
});

describe('a typed number', () => {
  const level = withAnswer('watts-to-dbm', '37.0\u00a0dBm');

  it('may have another unit of its family', () => {
    expect(outcome(level, '7.0 dBW')).toBe('right');
    const power = withAnswer('keyed-mean', '480\u00a0mW');
    for (const text of ['480 mW', '0.48 W', '0,48', '480000 uW', '4.8e-1 W'])
      expect(outcome(power, text)).toBe('right');
  });

  it('is not taken where the question is to change it over and it comes back as given', () => {
    expect(mark(level, '5 W')).toMatchObject({
      outcome: 'unread',
      reply: 'True, but it is asked for in dBm: to change it over is a part of the question.',
    });
    const volts = sittingsOf(bankQuestion('rms-of-peak-to-peak'))[0] as Sitting;
    expect(outcome(volts, `${drawnOf(volts)('height')} Vpp`)).toBe('unread');
  });

  it('with the right digits and the wrong unit is told which unit it would be right in', () => {
    expect(mark(level, '37 dB')).toMatchObject({
      outcome: 'near',
      reply: 'The number is right, its unit is not: it would be right in dBm.',
    });
    expect(mark(level, '37 W').reply).toBe('The number is right, its unit is not: it would be right in dBm.');
    const power = withAnswer('keyed-mean', '480\u00a0mW');
    expect(mark(power, '480').reply).toBe('The number is right, its unit is not: it would be right in mW.');
  });

  it('that is off by a factor is told which', () => {
    const power = withAnswer('rms-expected', '5.00\u00a0V RMS');
    expect(mark(power, '10').reply).toBe('Nearly: it is a factor of two too large.');
    expect(mark(power, '1.25').reply).toBe('Nearly: it is a factor of four too small.');
    expect(mark(level, '40.01').reply).toBe('Nearly: it is a factor of two of power too large.');
    expect(mark(power, '-5').reply).toBe('The number is right, its sign is not.');
    expect(mark(power, '7.3')).toMatchObject({ outcome: 'wrong', misconception: undefined });
  });

  it('with a comma that can mean two things is right where one of them is, and else told', () => {
    const of = (value: number): Sitting => ({ ...level, payload: { ...typedOf(level), value } });
    expect(outcome(of(1.234), '1,234')).toBe('right');
    expect(outcome(of(1234), '1,234 dBm')).toBe('right');
    expect(outcome(of(-1234), '\u22121,234')).toBe('right');
    expect(mark(of(1.434), '1,234')).toMatchObject({
      outcome: 'unread',
      reply: '“1,234” can mean 1.234 or 1234: write 1.234 or 1234.',
    });
  });

  it('is unread where it is none, with the sentence that says why', () => {
    for (const text of ['', 'about five', '8 apples', '5 dB', '1.234,5.6']) {
      const marked = mark(level, text);
      expect(marked.outcome).toBe('unread');
      expect(marked.reply.length).toBeGreaterThan(10);
    }
  });
});

describe.each(kinds('choice').slice(0, 40))('choosing in %s', (_, question) => {
  it('is right for one option, and tells each other one its mistake', () => {
    const one = sitting(question, 3);
    if (one.payload.kind !== 'choice') throw new TypeError('a choice was expected');
    for (const { id, reply, misconception } of one.payload.options)
      expect(mark(one, id)).toEqual({
        outcome: id === one.payload.answer ? 'right' : 'wrong',
        reply,
        misconception,
      });
    expect(outcome(one, 'z')).toBe('unread');
    expect(outcome(one, '')).toBe('unread');
  });
});

describe.each(kinds('place'))('pointing in %s', (_, question) => {
  it('is right at one place', () => {
    const one = sitting(question, 3);
    if (one.payload.kind !== 'place') throw new TypeError('a place was expected');
    const right = one.payload.places.filter(({ id }) => outcome(one, id) === 'right');
    expect(right.map(({ id }) => id)).toEqual([one.payload.answer]);
    expect(outcome(one, 'nowhere')).toBe('unread');
  });
});

describe.each(kinds('order'))('putting in order: %s', (_, question) => {
  it('is right one way, near the other way round, and wrong otherwise', () => {
    const one = sitting(question, 3);
    if (one.payload.kind !== 'order') throw new TypeError('an order was expected');
    const { answer, reversed, otherwise } = one.payload;
    expect(mark(one, answer)).toEqual({ outcome: 'right', reply: one.right, misconception: undefined });
    expect(outcome(one, answer.join(' '))).toBe('right');
    expect(mark(one, answer.toReversed())).toEqual({ outcome: 'near', ...reversed });
    const [first = '', second = '', ...rest] = answer;
    expect(mark(one, [second, first, ...rest])).toEqual({ outcome: 'wrong', ...otherwise });
    expect(outcome(one, answer.slice(1))).toBe('unread');
    expect(
      outcome(
        one,
        answer.map(() => first),
      ),
    ).toBe('unread');
  });
});
