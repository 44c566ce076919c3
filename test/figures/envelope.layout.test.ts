import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Envelope, meanOverPeakEnvelope } from '#compute';
import { type EnvelopeFrame, envelopeMeasures, isEnvelopeFrame } from '../../src/figures/envelope.frame.ts';
import { type EnvelopeProps, envelopeLayout, envelopeSpan } from '../../src/figures/envelope.layout.ts';
import { parisMarks, patternOf } from '../../src/figures/envelope.pattern.ts';

const envelopes: readonly Envelope[] = ['steadyCarrier', 'stringOfDits', 'parisWord', 'twoEqualTones'];
const frames: readonly EnvelopeFrame[] = ['wide', 'narrow', 'stage'];
const props: fc.Arbitrary<EnvelopeProps> = fc
  .record({
    frame: fc.constantFrom(...frames),
    envelope: fc.constantFrom(...envelopes),
    peakW: fc.double({ min: 0.001, max: 1000, noNaN: true }),
  })
  .map(({ frame, envelope, peakW }) => ({
    frame,
    envelope,
    peakW,
    meanW: peakW * meanOverPeakEnvelope(envelope),
    carrierW: envelope === 'twoEqualTones' ? undefined : peakW,
    spanW: envelopeSpan([peakW]),
  }));

const areaOf = (points: readonly { readonly x: number; readonly y: number }[]): number =>
  points
    .slice(1)
    .reduce(
      (sum, { x, y }, index) => sum + ((x - (points[index]?.x ?? x)) * (y + (points[index]?.y ?? y))) / 2,
      0,
    );

describe('the pattern of an envelope', () => {
  it.each(envelopes)('of %s has the mean that the sums use, as the area under it', (envelope) => {
    const points = patternOf(envelope).map(({ at, share }) => ({ x: at, y: share }));
    // chords under a cosine squared: a whole number of beats gives the mean itself
    expect(areaOf(points)).toBeCloseTo(meanOverPeakEnvelope(envelope), 9);
  });

  it.each(envelopes)('of %s goes from the beginning to the end without turning back', (envelope) => {
    const points = patternOf(envelope);
    expect([points[0]?.at, points.at(-1)?.at]).toEqual([0, 1]);
    points.slice(1).forEach(({ at, share }, index) => {
      expect(at).toBeGreaterThanOrEqual(points[index]?.at ?? 0);
      expect(share >= 0 && share <= 1).toBe(true);
    });
  });
});

describe('the word PARIS', () => {
  it('has 50 units, 22 of them on, in 14 marks and 5 letters (ITU-R M.1677)', () => {
    const { marks, letters, length } = parisMarks();
    expect(length).toBe(50);
    expect(marks.reduce((sum, { from, to }) => sum + to - from, 0)).toBe(22);
    expect(marks).toHaveLength(14);
    expect(letters.map(({ name }) => name).join('')).toBe('PARIS');
  });

  it('has spaces of 1 between marks and 3 between letters, and 7 at its end', () => {
    const { marks, length } = parisMarks();
    const spaces = marks.slice(1).map(({ from }, index) => from - (marks[index]?.to ?? 0));
    expect(spaces.filter((space) => space === 3)).toHaveLength(4);
    expect(spaces.filter((space) => space === 1)).toHaveLength(9);
    expect(length - (marks.at(-1)?.to ?? 0)).toBe(7);
  });
});

describe('coordinates of the envelope', () => {
  it('turn back into the peak that is drawn, so that its knob stays under the pointer', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { scale, handle, measures } = envelopeLayout(given);
        const step = given.spanW / (measures.power[1] - measures.power[0]);
        expect(Math.abs(scale.invert(handle.y) - given.peakW)).toBeLessThan(0.02 * step);
      }),
    );
  });

  it('draw the mean at the height of the area spread evenly', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { line, ground, marks, measures } = envelopeLayout(given);
        const points = [...line.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => ({
          x: Number(x),
          y: ground - Number(y),
        }));
        const mean = areaOf(points) / (measures.plot[1] - measures.plot[0]);
        const drawn = ground - (marks.find(({ id }) => id === 'mean')?.y ?? 0);
        expect(Math.abs(mean - drawn)).toBeLessThan(0.1);
      }),
    );
  });

  it('mark peak, carrier and mean, the carrier only where there is one, and keep the words apart', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { marks, measures } = envelopeLayout(given);
        expect(marks.map(({ id }) => id).toSorted()).toEqual(
          given.envelope === 'twoEqualTones' ? ['mean', 'peak'] : ['carrier', 'mean', 'peak'],
        );
        marks.slice(1).forEach(({ labelY }, index) => {
          expect(labelY - (marks[index]?.labelY ?? 0)).toBeGreaterThanOrEqual(measures.labelPitch - 0.02);
        });
      }),
    );
  });

  it('name the letters under the word alone, and leave a ghost only of another peak', () => {
    const [one] = fc.sample(props, 1);
    if (!one) throw new Error('wish a sample');
    expect(envelopeLayout({ ...one, envelope: 'parisWord' }).letters).toHaveLength(5);
    expect(envelopeLayout({ ...one, envelope: 'stringOfDits' }).letters).toEqual([]);
    expect(envelopeLayout({ ...one, beforeW: one.peakW }).ghostY).toBeUndefined();
    expect(envelopeLayout({ ...one, beforeW: one.peakW / 2 }).ghostY).toBeGreaterThan(0);
  });
});

describe('frames of the envelope', () => {
  it('are known by name', () => {
    expect(frames.every(isEnvelopeFrame)).toBe(true);
    expect([undefined, 'toString', 'page'].some((name) => isEnvelopeFrame(name))).toBe(false);
    for (const frame of frames)
      expect(envelopeMeasures(frame).plot[1]).toBeLessThan(envelopeMeasures(frame).labelX);
  });
});
