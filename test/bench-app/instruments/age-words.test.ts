import { describe, expect, it } from 'vitest';
import { ageWords } from '../../../src/bench/instruments/age-words.ts';
import { readDay } from '../../../src/instruments/day.ts';

const words = (calibrated: string, interval: string, on = '2026-05-09') => {
  const day = readDay(on);
  if (day === undefined) throw new Error('wish a day');
  return ageWords({ calibrated, interval }, day);
};

describe('the age of a calibration in words', () => {
  it('warns once the interval has run out, with both days and what to do', () => {
    const found = words('2024-01-20', '24');
    expect(found?.warns).toBe(true);
    expect(found?.text).toContain('Calibrated on 2024-01-20');
    expect(found?.text).toContain('24 months you set, which ended on 2026-01-20');
    expect(words('2026-04-01', '1')?.text).toContain('older than the month you set');
  });

  it('says until when it stands, or that no interval was set', () => {
    expect(words('2026-03-02', '12')).toEqual({
      text: 'Calibrated on 2026-03-02; the interval you set ends on 2027-03-02.',
      warns: false,
    });
    expect(words('1999-01-01', '')).toEqual({ text: 'Calibrated on 1999-01-01.', warns: false });
  });

  it('warns of a day after the day of use: a date or a clock is wrong', () => {
    const found = words('2030-01-01', '12');
    expect(found?.warns).toBe(true);
    expect(found?.text).toContain('clock of this device');
  });

  it('says nothing where there is no day', () => {
    expect(words('', '12')).toBeUndefined();
  });
});
