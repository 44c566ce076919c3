import { describe, expect, it } from 'vitest';
import { exampleTexts } from '../../src/examples/copy.ts';
import { twoPadsIntoAReceiver as example } from '../../src/examples/two-pads-into-a-receiver.ts';
import { benchResult } from '../bench-app/bench-result.ts';

const { chain, judgement, improvement } = benchResult(example.sheet());
const better = benchResult(example.better.sheet());
/** U of receiver, mismatch, cable and two pads, k = 2, by hand from the divisors (GUM 4.3). */
const expanded = (receiver: number, pad: number): number =>
  2 * Math.sqrt((receiver ** 2 + 0.1 ** 2 + 2 * pad ** 2) / 3 + 0.2 ** 2 / 2);

describe('two pads into a receiver, by hand', () => {
  it('comes to the reading and every loss, and to the sum of squares', () => {
    expect(chain.result.estimate).toBeCloseTo(-13.4 + 0.2 + 20 + 20, 9);
    expect(chain.result.propagation.expanded).toBeCloseTo(expanded(2, 0.5), 9);
    expect(chain.result.worstCase.interval.upper).toBeCloseTo(26.8 + 2 + 0.2 + 0.1 + 0.5 + 0.5, 9);
    expect(chain.result.worstCase.interval.lower).toBeCloseTo(26.8 - 3.3, 9);
  });

  it('cannot tell inside from outside, and can once it is better known', () => {
    expect(judgement.verdict).toBe('cant-tell');
    expect(better.chain.result.propagation.expanded).toBeCloseTo(expanded(0.3, 0.1), 9);
    // 26.8 dBm with U 0.49 dB lies within 25.5 + 0.49 and 28.5 - 0.49 dBm
    expect(better.judgement.verdict).toBe('inside');
  });

  it('is decided by the receiver, and half as wrong or perfect is worth this', () => {
    expect(chain.dominantIds).toEqual(['receiver']);
    expect(improvement?.share).toBeCloseTo(4 / 3 / (expanded(2, 0.5) / 2) ** 2, 9);
    expect(improvement?.halvedDb).toBeCloseTo(expanded(1, 0.5), 9);
    expect(improvement?.perfectDb).toBeCloseTo(expanded(0, 0.5), 9);
  });

  it('warns of a factor of a hundred where a pad is forgotten', () => {
    // 10^(2.68) mW = 479 mW; with 6.8 dBm instead, 4.79 mW
    expect(example.mistake()).toMatch(
      /^Forgetting one pad in the sum gives 4\.8\u00a0mW instead of 480\u00a0mW; /,
    );
  });

  it.each(['Plain text', 'Plain text with signs', 'Markdown', 'BBCode'])('says so as %s', (name) => {
    const texts = exampleTexts(example, { link: 'https://site.invalid/', version: '1.2.3' });
    const text = texts.find((form) => form.name === name)?.text ?? '';
    const flat = text
      .replaceAll(/\s+/g, ' ')
      .replaceAll('+/-', '±')
      .replaceAll('−', '-')
      .replaceAll('’', "'")
      .replaceAll('\\', '');
    // watts end by end: 10^(2.68 -+ 0.247) mW; one digit less than U has, so rounded to tens
    for (const part of [
      '26.8 dBm ±2.5 dB (k = 2, 95.45 %); 480 mW, 270 to 840',
      'L = -13.4 dBm + 0.2 dB + 20.0 dB + 20.0 dB = 26.8 dBm',
      'Worst case ±3.3 dB, 23.5 to 30.1 dBm, 0.22 to 1.02 W',
      "Receiver's level display, 88 % of the variance",
      "can't tell",
      'Assumed: Steady carrier, key down: mean power and peak envelope power are the same; Power into 50',
    ])
      expect(flat).toContain(part);
  });
});
