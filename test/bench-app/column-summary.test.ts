import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnOutlier, columnSummary } from '../../src/bench/form/column-summary.ts';
import { COLUMNS, METHODS } from '../../src/sheet/method.ts';

/** Spaces of every kind as ordinary ones. */
const plain = (text: string | undefined): string | undefined => text?.replace(/\s/g, ' ');
const levels = (text: string) => plain(columnSummary({ method: 'padsIntoMeter', column: 'readings', text }));

describe('what is said under a column of readings', () => {
  it('never throws and shows no broken number, whatever is pasted', () => {
    const junk = fc.oneof(
      fc.string(),
      fc
        .array(fc.oneof(fc.double().map(String), fc.constantFrom('7,0', '7.1 dBm', '5 mW', '', 'n/a')))
        .map((lines) => lines.join('\n')),
    );
    fc.assert(
      fc.property(junk, fc.constantFrom(...METHODS), fc.constantFrom(...COLUMNS), (text, method, column) => {
        expect(columnSummary({ method, column, text }) ?? '').not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('is how many, their mean and their scatter, in as many digits as the scatter bears', () => {
    // mean 7.10, s = 0.10 by hand
    expect(levels('7.0\n7,1 dBm\n7.2')).toBe('3 readings, mean 7.10 dBm, scatter s = 0.10 dB');
    expect(levels('7.0\n7.0')).toBe('2 readings, mean 7.000 dBm, scatter s = 0.000 dB');
  });

  it('is in the unit that the method reads', () => {
    const oscilloscope = columnSummary({
      method: 'oscilloscope',
      column: 'readings',
      text: '14.0\n14.2\n14.4',
    });
    expect(plain(oscilloscope)).toBe('3 readings, mean 14.20 Vpp, scatter s = 0.20 Vpp');
    const current = columnSummary({ method: 'dcSubstitution', column: 'amperes', text: '100 mA\n102 mA' });
    // mean 101 mA, s = 2/sqrt 2 = 1.41 mA
    expect(plain(current)).toBe('2 readings, mean 0.1010 A, scatter s = 0.0014 A');
  });

  it('is the watts of a single level, and nothing where a line is no reading', () => {
    expect(levels('5 mW')).toBe('= 6.99 dBm');
    expect(levels('7.0\nabc\n7.2')).toBeUndefined();
    expect(levels('')).toBeUndefined();
  });

  it('is a summary and no list for ten thousand readings', () => {
    const text = Array.from({ length: 10_000 }, (_, index) => (7 + (index % 2) / 10).toFixed(1)).join('\n');
    expect(levels(text)).toBe('10000 readings, mean 7.050 dBm, scatter s = 0.050 dB');
  });
});

describe('the reading that stands off', () => {
  const outlier = (text: string) => columnOutlier({ method: 'oscilloscope', column: 'readings', text });

  it('is pointed at with its place in the column', () => {
    // by hand: mean 14.186, s 0.3625, so 15 stands 2.25 s off; more than 2.02 is too far for seven (NIST e-Handbook, 1.3.5.17.1)
    const sentence = plain(outlier('14.0\n14.1\n14.0\n14.1\n14.0\n14.1\n15'));
    expect(sentence).toContain('15 Vpp');
    expect(sentence).toContain('2.25');
    expect(sentence).toContain('2.02');
  });

  it('is none where all stand together, where there are too few, or where a line is no reading', () => {
    for (const text of ['', '14', '14\n15', '14.0\n14.1\n14.2\n14.1', '14\n14.1\n14\n14.1\nabc\n14\n19'])
      expect(outlier(text), text).toBeUndefined();
  });
});
