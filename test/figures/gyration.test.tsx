import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { Gyration } from '../../src/figures/Gyration.tsx';
import { type GyrationFrame, gyrationMeasures, isGyrationFrame } from '../../src/figures/gyration.frame.ts';
import { gyrationLayout } from '../../src/figures/gyration.layout.ts';
import { MEANINGS, SLIPS } from '../../src/sheet/stated.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/stated/figure.ts';
import { type StatedState, statedSpec } from '../../src/widgets/stated/spec.ts';
import { figureWords } from '../../src/widgets/stated/words.ts';

const prepared = defaultState(statedSpec.fields);
const FRAMES = ['wide', 'narrow', 'stage'] as const satisfies readonly GyrationFrame[];

const figure = (now: Partial<StatedState> = {}) =>
  figureOf(fieldsState<typeof statedSpec.fields>({ ...prepared, ...now }));
const draw = (now: Partial<StatedState> = {}, frame: GyrationFrame = 'wide', handle = true): string =>
  render(
    <Gyration
      frame={frame}
      {...figure(now)}
      words={figureWords({ ...prepared, ...now })}
      name="The bar"
      description="It shows"
      handle={handle}
    />,
  );
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, readonly [Partial<StatedState>, GyrationFrame?]>> = {
  'the club’s pad': [{}],
  'the club’s pad, narrow': [{}, 'narrow'],
  'the club’s pad on the wall': [{}, 'stage'],
  'a triangle': [{ meaning: 'middle' }],
  'a certificate, without ends': [{ meaning: 'certificate' }],
  'a mismatch taken for limits': [{ meaning: 'wave', slip: 'rootThree' }],
};

describe.each(Object.entries(named))('a bar and its lumps, %s', (_name, [now, frame]) => {
  it('is drawn as it was before', () => {
    expect(draw(now, frame).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws finite numbers only, asks for no style, and has one handle or none', () => {
    expect(draw(now, frame)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(count(draw(now, frame), /data-handle="at"/g)).toBe(1);
    expect(draw(now, frame, false)).not.toContain('data-handle');
  });
});

describe('what the bar shows', () => {
  it('are its limits, where there are any', () => {
    const leaders = (now: Partial<StatedState>) => count(draw(now), /class="plot-leader"/g);
    expect(leaders({})).toBe(2);
    expect(leaders({ meaning: 'certificate' })).toBe(1);
  });

  it('is what somebody says as dashed lumps and a dashed strip, only if somebody does', () => {
    expect(draw()).not.toContain('plot-ghost');
    expect(count(draw({ slip: 'asStandard' }), /<circle class="plot-ghost"/g)).toBe(2);
    expect(count(draw({ slip: 'asStandard' }), /<rect class="plot-ghost band-ghost"/g)).toBe(1);
  });

  it('runs out of the figure for a mismatch alone', () => {
    const cut = MEANINGS.filter((meaning) => gyrationLayout({ frame: 'wide', ...figure({ meaning }) }).cut);
    expect(cut).toEqual(['wave']);
  });
});

describe('its coordinates', () => {
  const frame = fc.constantFrom(...FRAMES);
  const state = fc.record({
    meaning: fc.constantFrom(...MEANINGS),
    halfWidth: fc.integer({ min: 1, max: 60 }).map((steps) => steps / 20),
    slip: fc.constantFrom(...SLIPS),
  });

  it('come back as the value that they were made from, where the knob is pulled', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { scale, handleX } = gyrationLayout({ frame: name, ...figure(now) });
        expect(scale.invert(handleX)).toBeCloseTo(now.halfWidth, 1);
        expect(scale.invert(scale(now.halfWidth))).toBeCloseTo(now.halfWidth, 9);
      }),
    );
  });

  it('are even about the middle, lumps within the ends, and all of it on the axis', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const drawing = gyrationLayout({ frame: name, ...figure(now) });
        const [left, right] = drawing.measures.across;
        for (const pair of [
          drawing.lumps,
          drawing.strip,
          drawing.saidLumps,
          drawing.saidStrip,
          drawing.ends,
        ]) {
          if (pair === undefined) continue;
          expect(pair[0] + pair[1]).toBeCloseTo(left + right, 1);
          expect(pair[0]).toBeGreaterThanOrEqual(left);
          expect(pair[1]).toBeLessThanOrEqual(right);
        }
        if (drawing.ends) expect(drawing.lumps[1]).toBeLessThan(drawing.ends[1]);
      }),
    );
  });

  it('keep the outline between the bar’s top and the line that it stands on', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { outline, measures } = gyrationLayout({ frame: name, ...figure(now) });
        for (const [, y] of outline.matchAll(/[ML][\d.]+ ([\d.]+)/g)) {
          expect(Number(y)).toBeGreaterThanOrEqual(measures.bar[0]);
          expect(Number(y)).toBeLessThanOrEqual(measures.bar[1]);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('lie in frames with room for their words', () => {
    for (const name of FRAMES) {
      const { height, axis, wordsDrop, width, across } = gyrationMeasures(name);
      expect(axis + wordsDrop).toBeLessThan(height);
      expect(across[1]).toBeLessThan(width);
    }
    expect(isGyrationFrame('wide')).toBe(true);
    expect(isGyrationFrame('toString')).toBe(false);
    expect(isGyrationFrame(undefined)).toBe(false);
  });

  it('are refused without a width', () => {
    const of = { frame: 'wide', ...figure() } as const;
    expect(() => gyrationLayout({ ...of, span: 0 })).toThrow(
      'gyrationLayout: span and halfWidth must be > 0',
    );
    expect(() => gyrationLayout({ ...of, halfWidth: 0 })).toThrow('got 1, 0');
  });
});
