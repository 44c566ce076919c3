import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelDbm } from '#compute';
import {
  clubLine,
  highestVolts,
  type Line,
  linePowers,
  MATCHES,
  reachesDb,
  reflectionHere,
  reflectionThere,
  returnLossHere,
  returnLossThere,
  shownReturnLoss,
  shownSwr,
  swrHere,
} from '../../src/sheet/what-comes-back.ts';

const line: fc.Arbitrary<Line> = fc.record({
  levelDbm: fc.double({ min: 0, max: 50, noNaN: true }),
  antennaSwr: fc.double({ min: 1.1, max: 20, noNaN: true }),
  lossDb: fc.double({ min: 0, max: 10, noNaN: true }),
  match: fc.constantFrom(...MATCHES),
  directivityDb: fc.double({ min: 10, max: 40, noNaN: true }),
});
const watts = (level: number): number => 10 ** ((level - 30) / 10);
const near = (value: number, wish: number, scale = Math.abs(wish)): void =>
  expect(Math.abs(value - wish)).toBeLessThanOrEqual(1e-9 * Math.max(scale, 1e-12));

describe('powers along a line', () => {
  it('are conserved: what goes in is heat or taken, and what arrives is turned back or taken', () => {
    fc.assert(
      fc.property(line, (of) => {
        const { forward, back, into, arriving, turned, taken, heat } = linePowers(of);
        near(back + into, forward);
        near(heat + taken, into, forward);
        near(turned + taken, arriving);
        near(back, turned * 10 ** (-of.lossDb / 10), forward);
        expect(heat).toBeGreaterThanOrEqual(-1e-12 * forward);
      }),
    );
  });

  it('all go in behind a tuner, and forward alone is what a matched source gives', () => {
    fc.assert(
      fc.property(line, (of) => {
        near(linePowers({ ...of, match: 'tuner' }).into, watts(of.levelDbm));
        near(linePowers({ ...of, match: 'none' }).forward, watts(of.levelDbm));
        expect(reachesDb({ ...of, match: 'tuner' })).toBeGreaterThanOrEqual(
          reachesDb({ ...of, match: 'none' }),
        );
      }),
    );
  });

  it('reach the antenna behind a tuner by the handbook’s formula for the loss of a mismatched line', () => {
    fc.assert(
      fc.property(line, (of) => {
        const b = 10 ** (of.lossDb / 10);
        const rho = (of.antennaSwr - 1) / (of.antennaSwr + 1);
        const total = 10 * Math.log10((b ** 2 - rho ** 2) / (b * (1 - rho ** 2)));
        near(reachesDb({ ...of, match: 'tuner' }), -total, 1);
      }),
    );
  });

  it('are all taken where a tuner stands before a line without loss, however bad the antenna', () => {
    near(linePowers({ ...clubLine(), lossDb: 0, antennaSwr: 20, match: 'tuner' }).taken, watts(27));
  });

  it('by hand: the club’s antenna turns a quarter back, and the short line keeps little', () => {
    const { turned, arriving, taken } = linePowers(clubLine());
    near(turned / arriving, 0.25);
    near(taken, 0.75 * watts(27) * 10 ** -0.01);
  });
});

describe('the standing wave', () => {
  it('is smaller at the transmitter the more the line loses: two decibels of return loss for one', () => {
    fc.assert(
      fc.property(line, (of) => {
        near(returnLossHere(of), returnLossThere(of) + 2 * of.lossDb, 1);
        expect(swrHere(of)).toBeLessThanOrEqual(of.antennaSwr + 1e-9);
        expect(reflectionHere(of)).toBeLessThanOrEqual(reflectionThere(of));
      }),
    );
  });

  it('may show as anything about the true one, closer with a better coupler', () => {
    fc.assert(
      fc.property(line, (of) => {
        const { least, most } = shownSwr(of);
        expect(least).toBeLessThanOrEqual(swrHere(of) + 1e-9);
        expect(most ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(swrHere(of) - 1e-9);
        const better = shownSwr({ ...of, directivityDb: of.directivityDb + 5 });
        expect(better.least).toBeGreaterThanOrEqual(least);
        const losses = shownReturnLoss(of);
        expect(losses.least).toBeLessThanOrEqual(returnLossHere(of) + 1e-9);
        expect(losses.most === undefined).toBe(least === 1);
      }),
    );
  });

  it('by the trade’s example: 25 dB of directivity show a true 1.5 as 1.34 to 1.69', () => {
    const { least, most } = shownSwr({ ...clubLine(), antennaSwr: 1.5, lossDb: 0 });
    expect(least).toBeCloseTo(1.34, 2);
    expect(most).toBeCloseTo(1.69, 2);
  });
});

describe('the volts on the line', () => {
  it('are at most those of both waves in step at the transmitter’s end', () => {
    fc.assert(
      fc.property(line, (of) => {
        const { arriving } = linePowers(of);
        const there = Math.sqrt(arriving * 50) * (1 + reflectionThere(of));
        expect(highestVolts(of, levelDbm(of.levelDbm))).toBeGreaterThanOrEqual(there * (1 - 1e-9));
      }),
    );
    expect(highestVolts({ ...clubLine(), lossDb: 0 }, levelDbm(30))).toBeCloseTo(Math.sqrt(50) * 1.5, 9);
  });
});
