import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ageOf, monthsIn } from '../../src/instruments/age.ts';
import { type Day, dayIn, dayOf, monthsAfter, readDay, yearsBetween } from '../../src/instruments/day.ts';

const day = (text: string): Day => {
  const read = readDay(text);
  if (read === undefined) throw new Error(`wish a day, got ${text}`);
  return read;
};
const anyDay = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2200-12-31'), noInvalidDate: true })
  .map((date) => day(date.toISOString().slice(0, 10)));

describe('a day', () => {
  it('is read if a calendar has it, and only if nothing else stands there', () => {
    expect(readDay(' 2026-05-09 ')).toBe('2026-05-09');
    for (const text of ['', '2026-5-9', '2026-13-01', '2026-02-29', '2026-05-09, evening', '9 May 2026'])
      expect(readDay(text), text).toBeUndefined();
    expect(readDay('2024-02-29')).toBe('2024-02-29');
  });

  it('is found in a text, where it is the first that one could be', () => {
    expect(dayIn('measured 2026-05-09, 19:00')).toBe('2026-05-09');
    expect(dayIn('2026-02-31')).toBeUndefined();
    expect(dayIn('last week')).toBeUndefined();
  });

  it('never makes anything throw, whatever was typed', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(['string', 'undefined']).toContain(typeof dayIn(text));
        expect(['string', 'undefined']).toContain(typeof readDay(text));
      }),
    );
  });

  it('is the one where the device is, not the one of Greenwich', () => {
    expect(dayOf(new Date(2026, 4, 9, 0, 1))).toBe('2026-05-09');
    expect(dayOf(new Date(2026, 4, 9, 23, 59))).toBe('2026-05-09');
  });
});

describe('months later', () => {
  it('is the same day of the month, or the last one of a shorter month', () => {
    expect(monthsAfter(day('2026-05-09'), 12)).toBe('2027-05-09');
    expect(monthsAfter(day('2026-01-31'), 1)).toBe('2026-02-28');
    expect(monthsAfter(day('2024-02-29'), 12)).toBe('2025-02-28');
    expect(monthsAfter(day('2026-11-30'), 3)).toBe('2027-02-28');
    expect(monthsAfter(day('0026-05-09'), 12)).toBe('0027-05-09');
  });

  it('comes later by about a twelfth of a year each', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 240 }), (from, months) => {
        const to = monthsAfter(from, months);
        expect(to > from).toBe(true);
        expect(Math.abs(yearsBetween(from, to) - months / 12)).toBeLessThan(4 / 365);
      }),
    );
  });
});

describe('years between two days', () => {
  it('are as many one way as back the other', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (one, other) => {
        expect(yearsBetween(one, other)).toBeCloseTo(-yearsBetween(other, one), 12);
      }),
    );
  });

  it('are four in four years with a leap day, to a tenth of a percent', () => {
    expect(yearsBetween(day('2024-01-01'), day('2028-01-01'))).toBeCloseTo(4, 3);
  });
});

describe('the age of a calibration', () => {
  const on = day('2026-05-09');
  const age = (calibrated: string, interval: string) => ageOf({ calibrated, interval }, on);

  it('is old from the day after its interval has run out', () => {
    expect(age('2025-05-09', '12')).toEqual({
      state: 'stands',
      calibrated: '2025-05-09',
      due: on,
      months: 12,
    });
    expect(age('2025-05-08', '12')).toMatchObject({ state: 'old', due: '2026-05-08' });
  });

  it('never runs out where no interval was set, or none that is a number of months', () => {
    for (const interval of ['', '0', 'a year', '-3', '1.5']) {
      expect(age('1999-01-01', interval), interval).toEqual({ state: 'open', calibrated: '1999-01-01' });
      expect(monthsIn(interval)).toBeUndefined();
    }
    expect(monthsIn(' 24 ')).toBe(24);
  });

  it('is told as wrong where it lies after the day of use: a clock or a date is', () => {
    expect(age('2026-05-10', '12')).toEqual({ state: 'later', calibrated: '2026-05-10', on });
  });

  it('is not known without a day', () => {
    expect(age('', '12')).toEqual({ state: 'undated' });
    expect(age('2026-02-30', '12')).toEqual({ state: 'undated' });
  });

  it('stands as long as its interval is long, from any day', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 120 }), (calibrated, months) => {
        const due = monthsAfter(calibrated, months);
        const state = (then: Day) => ageOf({ calibrated, interval: String(months) }, then).state;
        expect([state(calibrated), state(due)]).toEqual(['stands', 'stands']);
        expect(state(monthsAfter(due, 1))).toBe('old');
      }),
    );
  });
});
