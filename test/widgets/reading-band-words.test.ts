import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { bandRows } from '../../src/widgets/parts/band-rows.ts';
import { allowed } from '../../src/widgets/reading-band/state.ts';
import { answersOf, summarise, wattsAnswer } from '../../src/widgets/reading-band/words.ts';

const nothing = (): Sheet =>
  clubSheet().links.reduce((sheet, { id }) => withLinkAmount(sheet, id, 0), clubSheet());

describe('words on a chain where nothing adds anything', () => {
  const chain = bandChainOf(nothing());

  it('give the level and its watts without a band, and call neither lopsided', () => {
    const [level, watts, most] = answersOf(chain);
    expect(level).toEqual({
      figure: '27.10\u00a0dBm',
      words: 'no band: no rung adds anything',
    });
    // 10^(27.1 / 10) mW
    expect(watts).toEqual({ figure: '513\u00a0mW', words: 'the same in watts' });
    expect(most?.figure).toBe('Nothing widens it');
  });

  it('are spoken as one sentence each', () => {
    expect(summarise(chain)).toBe('27.10 decibel-milliwatts, 513 milliwatts. Nothing widens it.');
  });

  it('call every row exact', () => {
    const rows = bandRows({ chain, showLimits: true, showCurve: false, handles: true });
    expect(rows.slice(1).map(({ number }) => number)).toEqual(Array(7).fill('exact'));
    expect(rows.every(({ strip, limits, ghost }) => !strip && !limits && !ghost)).toBe(true);
  });
});

describe('words on one rung that outweighs the rest', () => {
  it('name it and what half of it would leave', () => {
    const most = answersOf(bandChainOf(withLinkAmount(clubSheet(), 'meter', 3)))[2];
    expect(most?.figure).toBe('The meter that was lent widens it most');
    expect(most?.words).toMatch(/^9\d\u00a0% of the variance; half as wrong, it would leave ±1\.\d\u00a0dB$/);
  });
});

describe('words on two rungs that are level', () => {
  it('name both, and say what each has', () => {
    const chain = bandChainOf(withLinkAmount(clubSheet(), 'meter', 0.5));
    expect(chain.dominantIds).toEqual(['meter', 'pad']);
    const most = answersOf(chain)[2];
    expect(most?.figure).toBe('The meter that was lent and 20 dB pad widen it most');
    expect(most?.words).toMatch(
      /^4\d\u00a0% of the variance each; one of them half as wrong, it would leave ±0\.\d\d\u00a0dB$/,
    );
    const rows = bandRows({ chain, showLimits: true, showCurve: false, handles: true });
    expect(rows.filter(({ detail }) => detail.endsWith(' · most'))).toHaveLength(2);
    expect(summarise(chain)).toMatch(/The meter that was lent and 20 dB pad widen it most\.$/);
  });
});

describe('words on any chain', () => {
  const amount = fc.double({ min: 0, max: 3, noNaN: true }).map(allowed);
  const sheet = fc
    .array(amount, { minLength: 6, maxLength: 6 })
    .map((amounts) =>
      clubSheet().links.reduce(
        (changed, { id }, index) => withLinkAmount(changed, id, amounts[index] ?? 0),
        clubSheet(),
      ),
    );

  it('hold no sign in speech and no broken number anywhere', () => {
    fc.assert(
      fc.property(sheet, (given) => {
        const chain = bandChainOf(given);
        expect(summarise(chain)).not.toMatch(/[±−\u00a0]|NaN|Infinity|undefined/);
        for (const { figure, words } of answersOf(chain))
          expect(figure + words).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('put the watts between their ends', () => {
    fc.assert(
      fc.property(sheet, (given) => {
        const text = wattsAnswer('shown', bandChainOf(given));
        const unit = text.includes('mW') ? 1 : 1000;
        const [middle = Number.NaN, lower = middle, upper = middle] = [
          ...text.matchAll(/([\d.]+)(\u00a0mW|\u00a0W)?/g),
        ].map(([, number, own]) => Number(number) * (own === '\u00a0W' ? 1000 : own ? 1 : unit));
        expect(lower <= middle && middle <= upper, text).toBe(true);
      }),
    );
  });
});
