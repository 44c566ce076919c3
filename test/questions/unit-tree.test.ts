import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { changeOfWatt, chargesOfWatt, exactConstants, whatCounts } from '../../src/questions/unit-tree.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
/** SI Brochure, 9th edition, 2.2. */
const CHARGE = 1.602176634e-19;
/** A number as the question writes it, read back. */
const number = (text = ''): number => {
  const [mantissa = '', power = ''] = text.split(`${nb}×${nb}10`);
  return Number(mantissa) * 10 ** [...power].reduce((sum, sign) => 10 * sum + '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(sign), 0);
};

describe('what counts in a watt', () => {
  it('is the Planck constant; light and charge cancel, and the cylinder has left', () => {
    expect(right(whatCounts())).toMatch(/Planck/);
    expect(whatCounts().worked).toContain('powers \u22122, +1, +1: it cancels');
  });
});

describe('charges of the direct current that heats as much', () => {
  it('are, each by its mistake, crest, right, watts for amperes, and the whole swing', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 45 }),
        fc.integer({ min: 25, max: 150 }),
        (levelDbm, loadOhm) => {
          const watts = 10 ** (levelDbm / 10 - 3);
          const amperes = Math.sqrt(watts / loadOhm);
          const wish = [Math.SQRT2 * amperes, amperes, watts, 2 * Math.SQRT2 * amperes];
          texts(chargesOfWatt({ levelDbm, loadOhm })).forEach((text, index) => {
            expect(Math.abs((number(text) * CHARGE) / (wish[index] ?? 0) - 1)).toBeLessThan(0.006);
          });
        },
      ),
    );
  });

  it('are 8.83e17 a second for a watt in 50 ohms', () => {
    expect(right(chargesOfWatt())).toBe(`8.83${nb}×${nb}10¹⁷`);
    expect(chargesOfWatt().worked).toContain(`1.00${nb}W over 50${nb}Ω`);
  });
});

describe('exact constants', () => {
  it('leave the band of the current as it is: the root of that of the power', () => {
    expect(texts(exactConstants()).slice(1)).toEqual([
      `+12.2/\u221210.9${nb}%`,
      `±0.5${nb}%`,
      `+5.9/\u22125.6${nb}%`,
    ]);
    expect(right(exactConstants())).toBe(`+5.9/\u22125.6${nb}%`);
  });

  it('do so for every band', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), (tenths) => {
        const up = 100 * (10 ** (tenths / 200) - 1);
        expect(right(exactConstants({ halfDb: tenths / 10 }))).toMatch(
          new RegExp(`^[+±]${up.toFixed(1).replace('.', '\\.')}`),
        );
      }),
    );
  });
});

describe('the change of 2019', () => {
  // SI Brochure, Appendix 2: 106.665e-9 and 17.793e-9 (17.794 rounded).
  const [volt, ohm] = [0.106665, 0.017794];

  it('moves a power of volts squared over ohms by twice the one less the other', () => {
    expect(texts(changeOfWatt())).toEqual(
      [2 * volt - ohm, volt, 2 * volt + ohm, volt - ohm].map(
        (ppm) => `It is stated ${ppm.toFixed(3)}${nb}ppm larger.`,
      ),
    );
    expect(changeOfWatt().answer).toBe('a');
  });
});
