import { describe, expect, it } from 'vitest';
import { ageWords, linkAgeWords } from '../../../src/bench/instruments/age-words.ts';
import { readDay } from '../../../src/instruments/day.ts';
import { blankLink, type LinkEntries } from '../../../src/sheet/entries.ts';

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

describe('a link that was taken from an instrument', () => {
  const on = (day: string, link: Partial<LinkEntries>) => {
    const read = readDay(day);
    if (read === undefined) throw new Error('wish a day');
    return linkAgeWords({ ...blankLink('a'), calibrated: '2026-05-09', interval: '12', ...link }, read);
  };
  const drift = { part: 'drift', years: '1' } as const;
  const terms = { form: 'terms', perYear: '0.1', years: '1' } as const;

  it('warns where its drift was reckoned for another day, whatever the interval', () => {
    expect(on('2027-05-09', drift)).toEqual({
      text: 'Reckoned for 1.00 years since the calibration.',
      warns: false,
    });
    expect(on('2026-11-09', drift)).toMatchObject({
      warns: true,
      text: expect.stringContaining('0.50 years'),
    });
    expect(on('2026-11-09', { ...drift, years: 'x' })?.warns).toBe(true);
  });

  it('reads its years with either decimal sign', () => {
    for (const years of ['0.5', '0,5'])
      expect(on('2026-11-09', { ...drift, years }), years).toEqual({
        text: 'Reckoned for 0.50 years since the calibration.',
        warns: false,
      });
  });

  it('says of a term per year both the age and that the years are others', () => {
    expect(on('2027-05-09', terms)).toMatchObject({ warns: false, text: expect.stringContaining('ends on') });
    const found = on('2029-05-09', terms);
    expect(found?.warns).toBe(true);
    expect(found?.text).toMatch(/older than the 12 months.*3\.00 years after/);
  });

  it('says the age alone where nothing drifts', () => {
    expect(on('2026-11-09', {})).toEqual({
      text: 'Calibrated on 2026-05-09; the interval you set ends on 2027-05-09.',
      warns: false,
    });
    expect(on('2026-11-09', { calibrated: '', ...drift })).toBeUndefined();
  });
});
