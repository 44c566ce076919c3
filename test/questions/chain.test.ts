import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betterLaboratory, certificateTwice, weakestRung } from '../../src/questions/chain.ts';
import { questionIds, questionOf } from '../../src/questions/index.ts';
import type { Question } from '../../src/questions/question.ts';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { plusMinusText } from '../../src/text/deviation-text.ts';
import { decimalsFor } from '../../src/text/place.ts';

const textOf = ({ options }: Question, id: string): string | undefined =>
  options.find((option) => option.id === id)?.text;
const rightText = (question: Question): string | undefined => textOf(question, question.answer);
const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

/** U of the reading with the certificate, by hand: U/2 for the certificate, a/sqrt 2 U-shaped, a/sqrt 3 for plain limits (GUM 4.3). */
const byHand = ({ mismatch = 0.16, pad = 0.5, coax = 0.05 } = {}): number =>
  2 * Math.sqrt(0.15 ** 2 + mismatch ** 2 / 2 + (pad ** 2 + coax ** 2) / 3);

describe('every question', () => {
  it.each(questionIds())('%s is the same each time, and has letters in the order shown', (id) => {
    const question = questionOf(id);
    expect(questionOf(id)).toEqual(question);
    expect(question.options.map((option) => option.id)).toEqual(
      ['a', 'b', 'c', 'd', 'e'].slice(0, question.options.length),
    );
    expect(question.options.map(({ id: letter }) => letter)).toContain(question.answer);
  });

  it.each(questionIds())('%s gives each option a text and a reply that no other has', (id) => {
    const { options } = questionOf(id);
    expect(new Set(options.map(({ text }) => text)).size).toBe(options.length);
    expect(new Set(options.map(({ reply }) => reply)).size).toBe(options.length);
  });
});

describe('the certificate that is counted once', () => {
  it('has as its right option the sum by hand', () => {
    expect(rightText(certificateTwice())).toBe(band(byHand()));
    expect(certificateTwice().worked).toContain(band(byHand()));
  });

  it('follows the pad of the sheet, right and wrong options alike', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 150 }), (hundredths) => {
        const pad = hundredths / 100;
        const question = certificateTwice(withLinkAmount(clubSheet(), 'pad', pad));
        expect(rightText(question)).toBe(band(byHand({ pad })));
        expect(textOf(question, 'a')).toBe(band(byHand({ pad }) + 0.06 + 0.02));
        expect(textOf(question, 'd')).toBe(band(byHand({ pad: pad / 2 })));
      }),
      { numRuns: 20 },
    );
  });

  it('adds, for the one who counts twice, what the sheet says of laboratory and national standard', () => {
    const worse = withLinkAmount(withLinkAmount(clubSheet(), 'laboratory', 0.2), 'national', 0.1);
    const question = certificateTwice(worse);
    expect(textOf(question, 'a')).toBe(band(byHand() + 0.2 + 0.1));
    expect(rightText(question), 'the right answer does not know them').toBe(rightText(certificateTwice()));
  });

  it('does not ask the limits of the meter, which the certificate replaces', () => {
    expect(certificateTwice(withLinkAmount(clubSheet(), 'meter', 2)).options).toEqual(
      certificateTwice().options,
    );
  });

  it('cannot be asked of a sheet without the rungs it speaks of', () => {
    const sheet = clubSheet();
    const links = sheet.links.filter(({ id }) => id !== 'laboratory');
    expect(() => certificateTwice({ ...sheet, links })).toThrow(
      'linkNamed: the sheet must have the link, got "laboratory"',
    );
  });
});

describe('the weakest rung', () => {
  /** Shares by hand: each variance over their sum. */
  const shares = (pad: number) => {
    const national = 0.01 ** 2;
    const laboratory = 0.03 ** 2;
    const meter = 0.25 ** 2 / 3;
    const own = pad ** 2 / 3;
    const all = national + laboratory + meter + own + 0.16 ** 2 / 2 + 0.05 ** 2 / 3;
    return [own, meter, laboratory, national].map((variance) => (100 * variance) / all);
  };

  it('names the shares by hand, and they move with the sheet', () => {
    for (const pad of [0.5, 0.7]) {
      const [own = 0, meter = 0, laboratory = 0, national = 0] = shares(pad);
      expect(weakestRung(withLinkAmount(clubSheet(), 'pad', pad)).worked).toBe(
        `It brings ${own.toFixed(0)}\u00a0% of the variance. The lent meter brings ${meter.toFixed(0)}\u00a0%, the laboratory\u2019s comparison ${laboratory.toFixed(2)}\u00a0% and the national standard ${national.toFixed(2)}\u00a0%.`,
      );
    }
  });

  it('answers each wrong option with that rung\u2019s own share', () => {
    const { options } = weakestRung();
    const [, meter = 0, laboratory = 0, national = 0] = shares(0.5);
    const replies = Object.fromEntries(options.map(({ id, reply }) => [id, reply]));
    expect(replies.a).toContain(`${national.toFixed(2)}\u00a0%`);
    expect(replies.b).toContain(`${laboratory.toFixed(2)}\u00a0%`);
    expect(replies.c).toContain(`${meter.toFixed(0)}\u00a0%`);
  });
});

describe('the better laboratory', () => {
  /** Standard uncertainty of the reading, by hand, with what the laboratory states. */
  const uOf = (laboratory: number, meter = 0.25): number =>
    Math.sqrt(
      0.01 ** 2 + (laboratory / 2) ** 2 + meter ** 2 / 3 + 0.16 ** 2 / 2 + (0.5 ** 2 + 0.05 ** 2) / 3,
    );

  it('leaves the band as it was, by hand', () => {
    expect(rightText(betterLaboratory())).toBe(`${band(2 * uOf(0.006))}: nothing that anyone could see.`);
    expect(betterLaboratory().worked).toContain(`${band(2 * uOf(0.06))} stays ${band(2 * uOf(0.006))}`);
  });

  it('has wrong options that follow each its own mistake', () => {
    expect(textOf(betterLaboratory(), 'a')).toContain(band((2 * uOf(0.06)) / 10));
    expect(textOf(betterLaboratory(), 'b')).toContain(band(2 * uOf(0.06, 0)));
    expect(textOf(betterLaboratory(), 'd')).toContain(band(2 * uOf(0.06) - 0.054));
  });
});
