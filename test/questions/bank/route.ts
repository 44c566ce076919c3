import { describe, expect, it } from 'vitest';
import { bankQuestion } from '../../../src/questions/bank/index.ts';
import type { Sitting } from '../../../src/questions/bank/types.ts';
import { answerText, sittingsOf } from './all.ts';

/** Drawn numbers, by name; one that is not there shows as NaN and fails. */
export type Drawn = (name: string) => number;
/** Another way to the numbers of an answer, in watts, volts, dBm, dB, per cent as they stand. */
export type Route = (n: Drawn) => number | readonly number[];

const PREFIXES: Readonly<Record<string, number>> = { k: 1e3, m: 1e-3, '\u00b5': 1e-6, n: 1e-9, p: 1e-12 };
const RAISED = '\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079';

/** A number as printed, with the size of its last place. */
interface Printed {
  readonly value: number;
  readonly place: number;
}

/**
 * The numbers of a text as printed, without the site's own reader: prefixes of watts and volts count, a plus-minus is left off, and
 * `+0.26/−0.27` are two.
 */
export function printed(text: string): readonly Printed[] {
  const plain = text.replaceAll('\u00a0', ' ').replaceAll('\u2212', '-').replaceAll('\u00f7', '÷');
  const numbers = plain.matchAll(
    /(-)?(\d+)(?:\.(\d+))?(?: × 10([\u2070-\u2079\u00b2\u00b3\u00b9]+))?(?: ([kmnp\u00b5])(?=[WV](?![a-z])))?/g,
  );
  return [...numbers].map(([, minus, whole = '', fraction = '', raised = '', prefix = '']) => {
    const ten = [...raised].reduce((sum, sign) => 10 * sum + RAISED.indexOf(sign), 0);
    const scale = 10 ** ten * (PREFIXES[prefix] ?? 1);
    return {
      value: Number(`${minus ?? ''}${whole}.${fraction || '0'}`) * scale,
      place: 10 ** -fraction.length * scale,
    };
  });
}

/** The numbers that a sitting has drawn. */
export const drawnOf =
  ({ drawn }: Pick<Sitting, 'drawn'>): Drawn =>
  (name) =>
    drawn[name] ?? Number.NaN;

/** What does not fit: printed beside wanted. The last place may be rounded either way where the next digit is a five. */
export function misfits(text: string, wanted: readonly number[]): readonly string[] {
  const found = printed(text);
  if (found.length !== wanted.length) return [`${text}: ${wanted.length} numbers were expected`];
  return wanted.flatMap((value, k) => {
    const { value: shown, place } = found[k] ?? { value: Number.NaN, place: 0 };
    return Math.abs(shown - value) <= place * 0.5001 + Math.abs(value) * 1e-9
      ? []
      : [`${text}: ${value} was expected`];
  });
}

/** Every question of a table: its answer is what the other way gives, in 200 sittings. */
export function answersFollow(routes: Readonly<Record<string, Route>>): void {
  describe.each(Object.entries(routes))('%s', (id, route) => {
    const all = sittingsOf(bankQuestion(id));

    it('has the answer that another way gives, over 200 seeds', () => {
      const off = all.flatMap((one) => {
        const wanted = route(drawnOf(one));
        return misfits(answerText(one), typeof wanted === 'number' ? [wanted] : wanted);
      });
      expect(off).toEqual([]);
    });

    it('has no wrong answer that prints what the other way gives', () => {
      const right = all.flatMap((one) => {
        if (one.payload.kind !== 'choice') return [];
        const wanted = route(drawnOf(one));
        const list = typeof wanted === 'number' ? [wanted] : wanted;
        return one.payload.options.filter(
          ({ misconception, text }) => misconception !== undefined && misfits(text, list).length === 0,
        );
      });
      expect(right).toEqual([]);
    });

    it('has no wrong answer so near that only the last digit tells', () => {
      const near = all.flatMap((one) => {
        const wanted = route(drawnOf(one));
        if (one.payload.kind !== 'choice' || typeof wanted !== 'number') return [];
        const least = answerText(one).endsWith('dBm') ? 0.09 : 0.015 * Math.abs(wanted);
        return one.payload.options.filter(({ misconception, text }) => {
          const [{ value, place } = { value: Number.NaN, place: 0 }] = printed(text);
          return misconception !== undefined && !(Math.abs(value - wanted) > least - place / 2);
        });
      });
      expect(near).toEqual([]);
    });
  });
}
