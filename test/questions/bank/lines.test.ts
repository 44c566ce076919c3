import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow } from './route.ts';

/** A loss as a factor, by so many tenths of a tenth: 10^(-loss/10) as a product, without a power of ten to the loss. */
const kept = (loss: number): number => Math.exp(-0.2302585092994046 * loss);
const dbm = (power: number): number => 30 + (10 * Math.log(power)) / Math.LN10;
const watts = (level: number): number => kept(-(level - 30));
const written = (value: number): number => Number(value.toPrecision(3));

answersFollow({
  'out-of-pad': (n) => n('watts') * kept(n('loss')),
  'heat-in-pad': (n) => n('watts') * (1 - kept(n('loss'))),
  'heat-in-second-pad': (n) => n('watts') * (kept(n('first')) - kept(n('first') + n('second'))),
  'back-to-socket': (n) => dbm(watts(n('shown')) / kept(n('pad')) / kept(n('cable'))),
  'forgotten-pad': (n) => watts(n('shown')) / kept(n('pad')),
  'pad-for-meter': (n) => (10 * Math.log((1000 * n('watts')) / (1000 * watts(n('most'))))) / Math.LN10,
  'cable-by-length': (n) => n('table') / (100 / n('metres')),
  // So many lengths of a metre, each of which leaves its share, until the loss allowed is used up.
  'longest-cable': (n) => Math.log(kept(n('most'))) / Math.log(kept(n('table') / 100)),
  // Metre by metre instead of all at once.
  'cable-power-left': (n) =>
    Array.from({ length: n('metres') }).reduce<number>((left) => left * kept(n('table') / 100), n('watts')),
  'cable-by-frequency': (n) => n('low') * Math.exp(Math.log(n('up')) / 2),
  'pad-by-dc': (n) =>
    (20 * Math.log(n('before') / written(n('before') / 10 ** ((n('nominal') + n('off') / 100) / 20)))) /
    Math.LN10,
  'volts-behind-pad': (n) => Math.sqrt(n('watts') * 50) * Math.sqrt(kept(n('loss'))),
});

describe('point-at-hottest', () => {
  it('is the first pad, in watts', () => {
    for (const { payload, drawn, worked } of sittingsOf(bankQuestion('point-at-hottest'))) {
      const [power = 0, cable = 0, first = 0, second = 0] = ['watts', 'cable', 'first', 'second'].map(
        (name) => drawn[name],
      );
      const heats = {
        cable: power * (1 - kept(cable)),
        first: power * kept(cable) * (1 - kept(first)),
        second: power * kept(cable + first) * (1 - kept(second)),
        meter: power * kept(cable + first + second),
      };
      const [hottest] = Object.entries(heats).toSorted(([, a], [, b]) => b - a)[0] ?? [];
      expect(payload.kind === 'place' && payload.answer).toBe(hottest);
      expect(worked.at(-1)).toContain(heats.first >= 1 ? `${heats.first.toPrecision(3)}\u00a0W` : '\u00a0mW');
    }
  });
});
