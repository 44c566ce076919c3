import { describe, expect, it } from 'vitest';
import { fullName, nameOf, statementLine } from '../../../src/bench/instruments/instrument-words.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { clubInstruments } from '../../../src/instruments/club.ts';

const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');
const club = (start: string) => {
  const found = clubInstruments().find(({ label }) => label.startsWith(start));
  if (found === undefined) throw new Error(`wish an instrument of the club, got none called ${start}`);
  return found;
};

describe('an instrument in a line', () => {
  it.each([
    [
      'Pad A',
      'loss 20 dB; correction +0.07 dB; U 0.1 dB, k = 2; drift ±0.02 dB in a year (measured by yourself)',
    ],
    ['3 m', 'loss 0.1 dB; ±0.05 dB, limits (data sheet)'],
    ['Bench', '±3.0 % of volts, limits (data sheet)'],
    ['Multimeter', '0.5 % of reading + 2 steps of 0.01 (data sheet)'],
    ['Dummy', '49.8 Ω; U 1.0 % of resistance, k = 2 (measured by yourself)'],
  ])('%s says what it states, and where from', (start, line) => {
    expect(plain(statementLine(club(start)))).toBe(line);
  });

  it('of a table says how many places it has', () => {
    expect(plain(statementLine(club('The club')))).toMatch(
      /^corrections at 4 levels, at most U 0\.1 dB, k = 2;/,
    );
  });

  it.each(['49,8', '49.8 ohm', '49.8 Ω'])('of a load says its resistance, typed as %s', (resistance) => {
    expect(plain(statementLine({ ...club('Dummy'), resistance }))).toMatch(/^49\.8 Ω;/);
  });

  it('is none while its form is not finished', () => {
    expect(statementLine(blankInstrument('pad'))).toBeUndefined();
  });

  it('of an amplifier tells a gain, and a correction with its minus', () => {
    const amplifier = {
      ...blankInstrument('amplifier'),
      label: 'Amplifier',
      loss: '-10',
      basis: 'calibration',
      correction: '-0.2',
      uncertainty: '0.1',
      calibrated: '2026-05-09',
    } as const;
    expect(plain(statementLine(amplifier))).toMatch(/^gain 10 dB; correction −0\.2 dB;/);
  });
});

describe('the name of an instrument', () => {
  it('has its number behind it, and stands for itself where it has none', () => {
    expect(fullName(club('Pad A'))).toBe('Pad A, 20 dB, A');
    expect(fullName({ label: 'Pad', serial: ' ' })).toBe('Pad');
    expect(nameOf({ label: ' ' })).not.toBe('');
  });
});

describe('the club’s instruments', () => {
  it('are said to be invented, every one, and have names of their own', () => {
    for (const { notes, label } of clubInstruments()) expect(notes, label).toContain('Invented');
    const names = clubInstruments().map(fullName);
    expect(new Set(names).size).toBe(names.length);
  });

  it('show both what a data sheet and what a calibration states, and one that is too old', () => {
    const all = clubInstruments();
    expect(new Set(all.map(({ basis }) => basis))).toEqual(new Set(['dataSheet', 'calibration']));
    expect(all.some(({ calibrated, interval }) => calibrated < '2025' && interval === '24')).toBe(true);
  });
});
