import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const stated = (name: string): string => textOfValue(`stated.${name}`);
const db = (value: number, decimals = 2): string => `${value.toFixed(decimals)}${nb}dB`;

describe('the numbers of the lesson on what a tolerance says, each by hand', () => {
  it('are the pad’s limits and what the root of 3 makes of them', () => {
    expect(stated('limit')).toBe(`±${db(0.5, 1)}`);
    expect(stated('u')).toBe(db(0.5 / Math.sqrt(3)));
    expect(stated('twice')).toBe(`±${db(1 / Math.sqrt(3))}`);
    expect(stated('share')).toBe(`${(100 / Math.sqrt(3)).toFixed(0)}${nb}%`);
    expect(stated('withinU')).toBe(stated('share'));
  });

  it('are the pyramid in its box, and the inner half with an eighth of the work', () => {
    expect(stated('third')).toBe((1 / 3).toFixed(3));
    expect(stated('halfWay')).toBe(db(0.25));
    expect(stated('innerShare')).toBe(`12.5${nb}%`);
  });

  it('are the other shapes at the same number', () => {
    expect(stated('uMiddle')).toBe(db(0.5 / Math.sqrt(6)));
    expect(stated('uPlateau')).toBe(db(0.5 * Math.sqrt(1.25 / 6)));
    expect(stated('plateauDivisor')).toBe(Math.sqrt(6 / 1.25).toFixed(2));
    expect(stated('plateau')).toBe(`50${nb}%`);
    expect(stated('uWave')).toBe(db(0.5 / Math.SQRT2));
    expect(stated('uCertificate')).toBe(db(0.25));
    expect(stated('beyond')).toBe(`4.6${nb}%`);
  });

  it('are a tenth on a display', () => {
    expect(stated('step')).toBe(db(0.1, 1));
    expect(stated('stepHalf')).toBe(`±${db(0.05)}`);
    expect(stated('stepU')).toBe(db(0.1 / Math.sqrt(12), 3));
  });

  it('are what the mistakes cost', () => {
    expect(stated('asStandard')).toBe(`u = ${db(0.5)} where it is ${db(0.29)}: 1.73 times what it is`);
    expect(stated('asExpanded')).toBe(`u = ${db(0.25)} where it is ${db(0.29)}: 13${nb}% too small`);
    expect(stated('waveByThree')).toBe(`u = ${db(0.29)} where it is ${db(0.35)}: 18${nb}% too small`);
  });
});
