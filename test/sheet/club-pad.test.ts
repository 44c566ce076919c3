import { describe, expect, it } from 'vitest';
import { upperPowersOf } from '../../src/bench/results/cautions.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { behindClubPad, clubPadHeat, clubUpperLevel } from '../../src/sheet/club-pad.ts';

/** 28.5 dBm in milliwatts. */
const upper = 10 ** 2.85;

describe('the club’s pad on the socket', () => {
  it('stands the upper limit of the specification, as the bench reckons it', () => {
    expect(clubUpperLevel()).toBe(28.5);
    expect(upperPowersOf(clubSheet(), undefined)?.mean).toBeCloseTo(upper / 1000, 12);
  });

  it('gets hot by its highest attenuation, by hand: 20.5 dB leave less than a hundredth', () => {
    expect(1000 * clubPadHeat()).toBeCloseTo(upper * (1 - 10 ** -2.05), 9);
    expect(1000 * clubPadHeat()).toBeGreaterThan(0.99 * upper);
    expect(1000 * clubPadHeat()).toBeLessThan(upper);
  });

  it('lets through by its lowest: 19.5 dB, and without it the instrument would be harmed', () => {
    expect(behindClubPad()).toBeCloseTo(28.5 - 19.5, 12);
    const damage = clubSheet().damageLevelDbm ?? Number.NaN;
    expect(behindClubPad()).toBeLessThan(damage);
    expect(clubUpperLevel()).toBeGreaterThan(damage);
  });
});
