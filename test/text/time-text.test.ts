import fc from 'fast-check';
import { expect, it } from 'vitest';
import { timeText } from '../../src/text/time-text.ts';

it('says the day and the minute of any time, in UTC', () => {
  const years = { min: new Date('2000-01-01T00:00:00Z'), max: new Date('2100-01-01T00:00:00Z') };
  fc.assert(
    fc.property(fc.date({ ...years, noInvalidDate: true }), (date) => {
      const [day, rest] = date.toISOString().split('T');
      expect(timeText(date.toISOString())).toBe(`${day}, ${rest?.slice(0, 5)} UTC`);
    }),
  );
  expect(timeText('2026-11-25T03:12:59.000Z')).toBe('2026-11-25, 03:12 UTC');
});

it('leaves what is no time in UTC as it stands', () => {
  for (const text of ['', 'yesterday', '2026-11-25', '2026-11-25T03:12:59+01:00'])
    expect(timeText(text)).toBe(text);
});
