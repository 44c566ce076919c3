import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Judgement } from '#compute';
import { verdictZonesLayout, ZONES } from '../../src/figures/verdict-zones.layout.ts';

const names = { inside: 'inside', outside: 'outside', 'cant-tell': 'can’t tell' };
const both = { lower: 25.5, upper: 28.5 };

/** A judgement by a guard band of this width about the limits 25.5 and 28.5. */
const guarded = (width: number, estimate = 27): Judgement => ({
  verdict: 'inside',
  decidedBy: 'whole',
  interval: { lower: estimate - width, upper: estimate + width },
  hasUndecidedZone: true,
  probabilityOfConformity: 0.9,
  acceptance: width <= 1.5 ? { lower: 25.5 + width, upper: 28.5 - width } : undefined,
  rejection: { lower: 25.5 - width, upper: 28.5 + width },
  neededExpanded: undefined,
});

const draw = (judgement: Judgement, specification = both, estimate = 27) =>
  verdictZonesLayout({ estimate, judgement, specification, names });

describe('the zones among the limits', () => {
  it('cover the axis from end to end without a gap, whatever the guard band and the estimate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        (width, estimate) => {
          const { zones, estimateX, band } = draw(guarded(width, estimate), both, estimate);
          const [first, last] = ZONES.axis;
          expect(zones[0]?.x).toBeCloseTo(first, 1);
          const end = zones.reduce((x, zone) => {
            expect(zone.x).toBeCloseTo(x, 1);
            return zone.x + zone.width;
          }, first as number);
          expect(end).toBeCloseTo(last, 1);
          for (const x of [estimateX, band.x, band.x + band.width])
            expect(x >= first && x <= last).toBe(true);
        },
      ),
    );
  });

  it('are outside, can’t tell, inside, can’t tell, outside, the limits in the middle of the hatched ones', () => {
    const { zones, limits } = draw(guarded(0.5));
    expect(zones.map(({ verdict }) => verdict)).toEqual([
      'outside',
      'cant-tell',
      'inside',
      'cant-tell',
      'outside',
    ]);
    const hatched = zones[1];
    expect(limits[0]?.x).toBeCloseTo((hatched?.x ?? 0) + (hatched?.width ?? 0) / 2, 1);
  });

  it('have no inside where the guard band leaves no room', () => {
    expect(draw(guarded(2)).zones.map(({ verdict }) => verdict)).toEqual(['outside', 'cant-tell', 'outside']);
  });

  it('have no hatched one under simple acceptance', () => {
    const simple = { ...guarded(0.5), acceptance: both, rejection: both };
    expect(draw(simple).zones.map(({ verdict }) => verdict)).toEqual(['outside', 'inside', 'outside']);
  });

  it('go on to the end of the axis where there is no limit', () => {
    const none = { lower: Number.NEGATIVE_INFINITY };
    const oneSided = {
      ...guarded(0.5),
      acceptance: { ...none, upper: 28 },
      rejection: { ...none, upper: 29 },
    };
    const { zones, limits } = draw(oneSided, { ...none, upper: 28.5 });
    expect(zones.map(({ verdict }) => verdict)).toEqual(['inside', 'cant-tell', 'outside']);
    expect(limits.map(({ value }) => value)).toEqual([28.5]);
  });

  it('are named only where the name fits', () => {
    const { zones } = draw(guarded(0.01));
    expect(zones.map(({ verdict, named }) => `${verdict} ${named}`)).toEqual([
      'outside false',
      'cant-tell false',
      'inside true',
      'cant-tell false',
      'outside false',
    ]);
    const wide = draw(guarded(2)).zones.find(({ verdict }) => verdict === 'cant-tell');
    expect(wide?.named).toBe(true);
  });
});
