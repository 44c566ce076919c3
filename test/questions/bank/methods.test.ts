import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow } from './route.ts';

const db = (ratio: number): number => (10 * Math.log(ratio)) / Math.LN10;
/** Two resistances beside each other, by their conductances. */
const beside = (one: number, two: number): number => 1 / (1 / one + 1 / two);
/** A voltage divided, by the current that flows. */
const across = (volts: number, above: number, below: number): number =>
  volts - (volts / (above + below)) * above;

answersFollow({
  'detector-to-watts': (n) => ((n('dc') + n('drop')) / Math.SQRT2) ** 2 / 50,
  'detector-expected': (n) => 10 * Math.sqrt(n('watts')) - n('drop'),
  'drop-forgotten-in-db': (n) => db(n('peak') ** 2) - db((n('peak') - n('drop')) ** 2),
  'two-bandwidths': (n) => (n('scope') * n('probe')) / Math.hypot(n('scope'), n('probe')),
  // A single pole lets 1/(1 + jx) through: the power of that, by its two parts.
  'roll-off': (n) => {
    const x = n('frequency') / n('bandwidth');
    const [real, imaginary] = [1 / (1 + x * x), -x / (1 + x * x)];
    return -db(real * real + imaginary * imaginary);
  },
  'no-termination': (n) => (2 * Math.sqrt(n('watts') * 50)) ** 2 / 50,
  'two-terminations': (n) => across(2 * n('inner'), 50, beside(50, 50)),
  'full-scale': (n) => {
    const half = n('scale') * (n('percent') / 100);
    return [n('shown') - half, n('shown') + half];
  },
  'full-scale-in-db': (n) => db(n('shown')) - db(n('shown') - (n('scale') * n('percent')) / 100),
  'dc-substitution': (n) => n('volts') * (n('amperes') / n('dc')) * n('rf'),
  'meter-across-divider': (n) =>
    across(n('supply'), n('part'), beside(n('part'), n('sensitivity') * n('range'))),
  'digital-meter-loading': (n) => across(n('open'), n('inner') * 1000, 10_000),
  // By the voltage that source and load have with and without the capacitance, in complex conductances.
  'probe-capacitance': (n) => {
    const susceptance = 2 * Math.PI * n('frequency') * 1e6 * n('picofarads') * 1e-12;
    return 2 * db(Math.hypot(2 / 50, susceptance) / (2 / 50));
  },
  'probe-setting': (n) => (Math.sqrt((n('shown') / 1000) * 50) * 10) ** 2 / 50,
});

describe('point-at-plane', () => {
  it('names the loss between the place of the reading and the place of the result', () => {
    for (const { payload } of sittingsOf(bankQuestion('point-at-plane')).slice(0, 20)) {
      if (payload.kind !== 'place' || payload.figure.figure !== 'chain')
        throw new TypeError('a chain was expected');
      const [right, ...others] = payload.figure.boxes.filter(({ note }) => note !== '');
      expect(others).toEqual([]);
      expect(right?.id).toBe(payload.answer);
    }
  });
});
