import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import {
  clubHeat,
  type HeatUse,
  heatParts,
  heatResult,
  isSteady,
  offDb,
  offK,
  reached,
} from '../../src/sheet/dc-heat.ts';
import { usualLinks } from '../../src/sheet/method-links.ts';
import { toModel } from '../../src/sheet/to-model.ts';

const uses: fc.Arbitrary<HeatUse> = fc.record({
  volts: fc.integer({ min: 50, max: 2000 }).map((hundredths) => hundredths / 100),
  amperes: fc.integer({ min: 100, max: 5000 }).map((tenths) => tenths / 10_000),
  riseRfK: fc.integer({ min: 10, max: 400 }).map((tenths) => tenths / 10),
  riseDcK: fc.integer({ min: 10, max: 400 }).map((tenths) => tenths / 10),
  withinK: fc.integer({ min: 1, max: 50 }).map((hundredths) => hundredths / 100),
  timeConstant: fc.integer({ min: 1, max: 20 }),
  waitedRf: fc.integer({ min: 1, max: 60 }),
  waitedDc: fc.integer({ min: 1, max: 60 }),
  roomK: fc.integer({ min: -9, max: 9 }).map((tenths) => tenths / 10),
});

describe('what is reached of a rise', () => {
  it('is 63 % after one time constant, and as much of the rest after each more', () => {
    expect(reached({ minutes: 8, timeConstant: 8 })).toBeCloseTo(1 - 1 / Math.E, 12);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 5, max: 20 }),
        (minutes, timeConstant) => {
          const now = reached({ minutes, timeConstant });
          const later = reached({ minutes: minutes + timeConstant, timeConstant });
          expect((1 - later) / (1 - now)).toBeCloseTo(1 / Math.E, 9);
        },
      ),
    );
  });
});

describe('what waiting and the room leave', () => {
  it('cancels where both runs were waited for alike in a still room', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const alike = { ...use, waitedDc: use.waitedRf, roomK: 0 };
        expect(offDb(alike)).toBeCloseTo(0, 12);
        expect(isSteady(alike)).toBe(true);
      }),
    );
  });

  it('is too little power where RF was waited for less, and turns round with the runs', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const still = { ...use, roomK: 0 };
        const turned = { ...still, waitedRf: use.waitedDc, waitedDc: use.waitedRf };
        expect(offDb(turned)).toBeCloseTo(-offDb(still), 9);
        if (use.waitedRf < use.waitedDc) expect(offDb(still)).toBeLessThanOrEqual(0);
      }),
    );
  });

  it('is, in a room half a kelvin warmer, half a kelvin of the rise with DC', () => {
    const off = offDb({ ...clubHeat(), roomK: 0.5 });
    expect(off).toBeCloseTo(10 * Math.log10((9.4 - 0.5) / 9.4), 9);
    expect(offDb({ ...clubHeat(), roomK: -0.5 })).toBeGreaterThan(0);
  });

  it('is, of a rise read after ten minutes of eight each, what it has still to go', () => {
    const early = { ...clubHeat(), waitedRf: 10, waitedDc: 1e6 };
    expect(offK(early)).toBeCloseTo(9.5 / (1 - Math.exp(-10 / 8)) - 9.5, 9);
  });

  it('is in kelvin what it is in decibels, and compared with what a rise is known to', () => {
    fc.assert(
      fc.property(uses, (use) => {
        expect(offK(use)).toBeCloseTo(Math.abs(use.riseRfK - use.riseRfK / 10 ** (offDb(use) / 10)), 9);
        fc.pre(Math.abs(offK(use) - use.withinK) > 1e-6);
        expect(isSteady(use)).toBe(offK(use) < use.withinK);
      }),
    );
  });
});

describe('the result of a substitution', () => {
  it('is volts times amperes times the two rises', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const watts = (use.volts * use.amperes * use.riseRfK) / use.riseDcK;
        const { estimate, propagation } = heatResult(use);
        // Percentages are lopsided in decibels: the mean lies within a small part of the band beside the level of the product.
        expect(Math.abs(estimate - 10 * Math.log10(1000 * watts))).toBeLessThanOrEqual(
          0.2 * propagation.expanded,
        );
      }),
    );
  });

  it('is, for the club, what the bench makes of the same readings', () => {
    const bench = propagate({ model: toModel(sheetAt(clubMeasurement('dcSubstitution'), 'point1')) });
    const { propagation } = heatResult(clubHeat());
    expect(propagation.standardUncertainty).toBeCloseTo(bench.standardUncertainty, 9);
  });

  it('counts the parts as the bench assumes them', () => {
    const usual = usualLinks('dcSubstitution').map(({ id, stated, unit }) => ({
      id,
      statement: stated,
      unit,
    }));
    expect(heatParts(clubHeat())).toEqual(usual);
  });

  it('is 2.02 W to about 2 % for two watts on the same box, by hand', () => {
    const use = { ...clubHeat(), volts: 10, amperes: 0.1995, riseRfK: 14.2, riseDcK: 14 };
    const { estimate, propagation } = heatResult(use);
    const u = Math.sqrt((0.5 ** 2 + 1 + (10 / 14.2) ** 2 + (10 / 14) ** 2 + 1) / 3);
    expect(estimate).toBeCloseTo(10 * Math.log10((10 * 199.5 * 14.2) / 14), 3);
    expect(propagation.expanded).toBeCloseTo(2 * 0.04343 * u, 3);
  });

  it('gets wider with the thermometer and with less heat', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const band = (of: HeatUse): number => heatResult(of).propagation.expanded;
        expect(band({ ...use, withinK: use.withinK + 0.05 })).toBeGreaterThan(band(use));
        expect(band({ ...use, riseRfK: use.riseRfK + 5, riseDcK: use.riseDcK + 5 })).toBeLessThan(band(use));
      }),
    );
  });
});
