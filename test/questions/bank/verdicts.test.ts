import { erf, norm, std } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, type Drawn, drawnOf, misfits } from './route.ts';

const times = (decibels: number): number => Math.exp((decibels * Math.LN10) / 10);
const below = (z: number): number => (1 + Number(erf(z / Math.SQRT2))) / 2;
const readings = (n: Drawn): number[] => [0, n('up') / 100, -n('down') / 100];

answersFollow({
  // A common start does not matter to a scatter.
  'scatter-of-three': (n) => Number(std(readings(n), 'unbiased')),
  'scatter-of-mean': (n) => Math.sqrt((n('s') * n('s')) / n('n')),
  'how-many-readings': (n) => (n('s') / Number((n('s') / n('factor')).toPrecision(8))) ** 2,
  'what-readings-leave': (n) => Math.sqrt(n('s') ** 2 / n('n') + n('fixedPart') ** 2),
  'agree-limit': (n) => Number(norm([n('one'), n('other')])),
  'acceptance-limit': (n) => n('limit') - n('wide'),
  'surely-outside': (n) => n('limit') - n('wide'),
  'chance-of-conformity': (n) => 100 * below(n('below') / (n('wide') / 2)),
  'uncertainty-needed': (n) => Math.min(n('tolerance') - n('above'), n('tolerance') + n('above')),
  'upper-limit-in-watts': (n) => n('watts') * times(n('tolerance')),
  'safe-setting': (n) => n('watts') / times(n('wide')),
  'compared-over-k': (n) => n('apart') / Number(norm([n('one'), n('second')])),
  'digits-in-brackets': (n) => n('bracket') * 0.01,
});

describe('write-down', () => {
  it('keeps two digits of the uncertainty, and the value to the same place', () => {
    for (const { payload, ...one } of sittingsOf(bankQuestion('write-down'))) {
      const n = drawnOf(one);
      if (payload.kind !== 'choice') throw new TypeError('a choice was expected');
      const right = payload.options.find(({ id }) => id === payload.answer)?.text ?? '';
      expect(misfits(right, [n('level'), n('wide')])).toEqual([]);
      expect(right).toMatch(/^\d+\.\d\d\u00a0dBm ±0\.[1-9]\d\u00a0dB$/);
    }
  });
});

describe('point-at-verdict', () => {
  it('is the only reading whose band lies as its verdict says', () => {
    for (const { payload, stem, ...one } of sittingsOf(bankQuestion('point-at-verdict'))) {
      if (payload.kind !== 'place' || payload.figure.figure !== 'zones')
        throw new TypeError('zones were expected');
      const n = drawnOf(one);
      const [lower, upper] = [n('nominal') - 1.5, n('nominal') + 1.5];
      const verdicts = payload.figure.readings.map(({ id, at, halfWidth }) => {
        const [from, to] = [at - halfWidth, at + halfWidth];
        if (from > lower && to < upper) return { id, is: 'inside' };
        return { id, is: to < lower || from > upper ? 'outside' : 'can’t tell' };
      });
      const wanted = verdicts.filter(({ is }) => stem.includes(`“${is}”`));
      expect(wanted.map(({ id }) => id)).toEqual([payload.answer]);
    }
  });
});
