import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crestFactor, formFactor, type Waveform } from '#compute';
import { isTraceFrame, type TraceFrame, traceMeasures } from '../../src/figures/trace.frame.ts';
import { type TraceProps, traceLayout, voltsSpan, wattsSpan } from '../../src/figures/trace.layout.ts';
import { waveAt, wavePoints } from '../../src/figures/trace.wave.ts';

const waves: readonly Waveform[] = ['sine', 'square', 'triangle'];
const frames: readonly TraceFrame[] = ['wide', 'narrow', 'stage'];

const props: fc.Arbitrary<TraceProps> = fc
  .record({
    frame: fc.constantFrom(...frames),
    wave: fc.constantFrom(...waves),
    peak: fc.double({ min: 0.01, max: 500, noNaN: true }),
    before: fc.option(fc.double({ min: 0.01, max: 500, noNaN: true }), { nil: undefined }),
    ohms: fc.double({ min: 10, max: 200, noNaN: true }),
  })
  .map(({ frame, wave, peak, before, ohms }) => {
    const rms = peak / crestFactor(wave);
    const values = {
      wave,
      peak,
      rms,
      average: rms / formFactor(wave),
      meanW: rms ** 2 / ohms,
      greatestW: peak ** 2 / ohms,
    };
    return {
      frame,
      values,
      before: before === undefined ? undefined : { wave, peak: before },
      spanV: voltsSpan([peak, before ?? 0]),
      spanW: wattsSpan([values.greatestW]),
    };
  });

describe('a wave of unit peak', () => {
  it.each(waves)('%s has, sampled over a period, the crest and form factor that the sums use', (wave) => {
    const count = 20_000;
    const samples = Array.from({ length: count }, (_, index) => waveAt(wave, (index + 0.5) / count));
    const rms = Math.sqrt(samples.reduce((sum, value) => sum + value ** 2, 0) / count);
    const average = samples.reduce((sum, value) => sum + Math.abs(value), 0) / count;
    expect(1 / rms).toBeCloseTo(crestFactor(wave), 6);
    expect(rms / average).toBeCloseTo(formFactor(wave), 6);
  });

  it.each(waves)('%s repeats after a period and turns over after half of one', (wave) => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.499, noNaN: true }), (at) => {
        expect(waveAt(wave, at + 1)).toBeCloseTo(waveAt(wave, at), 9);
        expect(waveAt(wave, at + 0.5)).toBeCloseTo(-waveAt(wave, at), 9);
      }),
    );
  });

  it.each(waves)('%s is drawn in order of time, between its crests', (wave) => {
    const points = wavePoints(wave, 2);
    points.slice(1).forEach(({ at }, index) => {
      expect(at).toBeGreaterThanOrEqual(points[index]?.at ?? 0);
    });
    expect(points[0]?.at).toBe(0);
    expect(points.at(-1)?.at).toBe(2);
    expect(Math.max(...points.map(({ value }) => Math.abs(value)))).toBeCloseTo(1, 9);
  });
});

describe('coordinates of the trace', () => {
  it('turn back into the peak that is drawn, so that the crest stays under the pointer', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { scale, handle, measures } = traceLayout(given);
        const step = (2 * given.spanV) / (measures.volts[1] - measures.volts[0]);
        expect(Math.abs(scale.invert(handle.y) - given.values.peak)).toBeLessThan(0.02 * step);
      }),
    );
  });

  it('put the zero in the middle, and crest and trough equally far from it', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { zeroY, whole, measures } = traceLayout(given);
        expect(zeroY).toBeCloseTo((measures.volts[0] + measures.volts[1]) / 2, 2);
        expect(Math.abs(zeroY - whole.top - (whole.bottom - zeroY))).toBeLessThan(0.03);
      }),
    );
  });

  it('keep waves, marks and ghosts within the plot, and the height of a mark as its volts', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { marks, measures, wave, ghost, scale } = traceLayout(given);
        const [top, bottom] = measures.volts;
        for (const path of [wave, ghost ?? wave])
          for (const [, y] of path.matchAll(/[ML][\d.-]+ ([\d.-]+)/g))
            expect(Number(y) >= top - 0.01 && Number(y) <= bottom + 0.01).toBe(true);
        const of = { peak: given.values.peak, rms: given.values.rms, average: given.values.average };
        for (const { id, y } of marks)
          if (id in of) expect(Math.abs(y - scale(of[id as keyof typeof of]))).toBeLessThan(0.011);
      }),
    );
  });

  it('keep the labels of marks apart', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { marks, measures, power } = traceLayout(given);
        for (const list of [marks, power?.marks ?? []])
          list.slice(1).forEach(({ labelY }, index) => {
            expect(labelY - (list[index]?.labelY ?? 0)).toBeGreaterThanOrEqual(measures.labelPitch - 0.02);
          });
      }),
    );
  });

  it('draw the mean where it cuts the area under the power in two equal parts of a rectangle', () => {
    fc.assert(
      fc.property(
        props.filter(({ frame }) => frame !== 'stage'),
        (given) => {
          const { power, measures } = traceLayout(given);
          if (!power || !measures.power) throw new Error('wish a plot of power');
          const points = [...power.line.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => ({
            x: Number(x),
            y: power.ground - Number(y),
          }));
          const area = points
            .slice(1)
            .reduce(
              (sum, { x, y }, i) => sum + ((x - (points[i]?.x ?? x)) * (y + (points[i]?.y ?? y))) / 2,
              0,
            );
          const mean = area / (measures.plot[1] - measures.plot[0]);
          const drawn = power.ground - (power.marks.find(({ id }) => id === 'mean')?.y ?? 0);
          expect(Math.abs(mean - drawn)).toBeLessThan(0.012 * (measures.power[1] - measures.power[0]));
        },
      ),
    );
  });

  it('show a ghost only where something else was there before', () => {
    const [one] = fc.sample(props, 1);
    if (!one) throw new Error('wish a sample');
    expect(traceLayout({ ...one, before: undefined }).ghost).toBeUndefined();
    expect(traceLayout({ ...one, before: one.values }).ghost).toBeUndefined();
    expect(traceLayout({ ...one, before: { ...one.values, peak: one.values.peak / 2 } }).ghost).toMatch(/^M/);
  });
});

describe('frames of the trace', () => {
  it('are known by name, and the wall has one plot alone', () => {
    expect(frames.every(isTraceFrame)).toBe(true);
    expect([undefined, 'toString', 'page'].some((name) => isTraceFrame(name))).toBe(false);
    expect(traceMeasures('stage').power).toBeUndefined();
  });
});
