import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aloud } from '../../src/text/aloud.ts';

describe('a summary read aloud', () => {
  it('is made of sentences, each with its own beginning and end', () => {
    expect(aloud(['minus 3 decibels', 'No number. Two loads.', '', 'is it so?'])).toBe(
      'Minus 3 decibels. No number. Two loads. Is it so?',
    );
    expect(aloud([])).toBe('');
  });

  it('says the letters of the trade in words', () => {
    expect(aloud(['u = 0.36 dB', 'U\u00a0=\u00a01.3 dB, k = 2', 'ν = 17', 'V and I: r = 0.5'])).toBe(
      'Standard uncertainty 0.36 dB. Expanded uncertainty 1.3 dB, coverage factor 2. Degrees of freedom 17. V and I: correlation coefficient 0.5.',
    );
    expect(aloud(['95 % within ±0.5 dB'])).toBe('95 percent within plus or minus 0.5 dB.');
  });

  it('leaves words alone that end in such a letter', () => {
    expect(aloud(['menu = 3', 'over = 4'])).toBe('Menu = 3. Over = 4.');
  });

  it('leaves no sign unsaid, and says nothing twice over when it is read again', () => {
    const part = fc.string({ unit: fc.constantFrom('u', ' ', '=', '±', '%', 'ν', '3', 'a') });
    fc.assert(
      fc.property(fc.array(part), (parts) => {
        const once = aloud(parts);
        expect(once).not.toMatch(/[±%]/);
        expect(aloud([once])).toBe(once);
      }),
    );
  });
});
