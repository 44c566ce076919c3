import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import { sittingsOf } from './all.ts';
import { answersFollow, drawnOf, printed } from './route.ts';

/** The mean of a function over one turn, added up in steps. */
function meanOver(turn: (phase: number) => number): number {
  const steps = 64;
  return (
    Array.from({ length: steps }, (_, k) => turn((2 * Math.PI * (k + 0.5)) / steps)).reduce(
      (a, b) => a + b,
      0,
    ) / steps
  );
}
/** Mean of two equal tones over the power at the crest of their envelope. */
const twoTones = meanOver((phase) => Math.cos(phase / 2) ** 2);
/** The word PARIS with its spaces, unit by unit: a dit one, a dah three, one between them, three between letters, seven behind. */
const paris = ['.--.', '.-', '.-.', '..', '...']
  .map((letter) => [...letter].map((sign) => (sign === '.' ? '1' : '111')).join('0'))
  .join('000')
  .concat('0000000');
const parisShare = [...paris].filter((unit) => unit === '1').length / paris.length;
const times = (db: number): number => Math.exp((db * Math.LN10) / 10);
/** Half-wave dipole over isotropic as the definitions of ERP and EIRP take it. */
const DIPOLE = times(2.15);
/** The output as the question prints it, rounded in whole numbers: a half goes to the even digit. */
function printedOutput(n: (name: string) => number): number {
  const tiny = Math.round(10 * n('volts')) * Math.round(100 * n('amperes')) * n('share');
  const place = 10 ** (String(tiny).length - 3);
  const [kept, rest] = [Math.floor(tiny / place), tiny % place];
  const isUp = 2 * rest > place || (2 * rest === place && kept % 2 === 1);
  return ((kept + Number(isUp)) * place) / 1e5;
}

answersFollow({
  'pep-of-two-tones': (n) => meanOver((phase) => ((n('height') / 2) * Math.sin(phase)) ** 2) / 50,
  'mean-of-two-tones': (n) => n('pep') * twoTones,
  'pep-of-steady-carrier': (n) => n('watts'),
  'fm-mean': (n) =>
    n('watts') *
    meanOver(
      (phase) => Math.cos(phase + 0.3 * Math.sin(phase)) ** 2 + Math.sin(phase + 0.3 * Math.sin(phase)) ** 2,
    ),
  'keyed-mean': (n) => n('watts') - n('watts') * (1 - n('share') / 100),
  'pep-from-keyed-mean': (n) => n('shown') / parisShare,
  'keyed-in-db': (n) => (10 * Math.log(n('share') / 100)) / Math.LN10,
  'am-peak-envelope': (n) => (Math.sqrt(n('carrier')) + (Math.sqrt(n('carrier')) * n('depth')) / 100) ** 2,
  efficiency: (n) => (100 * printedOutput(n)) / n('volts') / n('amperes'),
  'heat-in-transmitter': (n) => n('volts') * n('amperes') - printedOutput(n),
  'eirp-level': (n) => n('level') - (n('loss') - n('gain')),
  'eirp-with-dipole-gain': (n) => (n('watts') / times(n('loss'))) * times(n('gain')) * DIPOLE,
  'erp-of-eirp': (n) => n('watts') / DIPOLE,
});

describe('the word PARIS', () => {
  it('has 22 units key-down among its 50', () => {
    expect(paris).toHaveLength(50);
    expect(parisShare).toBe(0.44);
  });
});

describe('order-of-means', () => {
  it('rises in mean power', () => {
    for (const { payload, worked, ...one } of sittingsOf(bankQuestion('order-of-means'))) {
      if (payload.kind !== 'order') throw new TypeError('an order was expected');
      const means: Readonly<Record<string, number>> = {
        few: drawnOf(one)('share') / 100,
        paris: parisShare,
        tones: twoTones,
        carrier: 1,
      };
      const inOrder = payload.answer.map((id) => means[id] ?? Number.NaN);
      expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
      const said = printed(worked[0] ?? '').map(({ value }) => value / drawnOf(one)('pep'));
      for (const share of inOrder)
        expect(Math.min(...said.map((each) => Math.abs(each - share)))).toBeLessThan(0.005);
    }
  });
});
