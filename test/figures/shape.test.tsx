import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { Shape } from '../../src/figures/Shape.tsx';
import { isShapeFrame, type ShapeFrame } from '../../src/figures/shape.frame.ts';
import { type ShapeProps, shapeLayout } from '../../src/figures/shape.layout.ts';
import { wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import { figureOf } from '../../src/widgets/link-sum/figure.ts';
import {
  type LinkSumFields,
  type LinkSumState,
  linkSumSpec,
  sumOf,
} from '../../src/widgets/link-sum/spec.ts';
import { strings } from '../../src/widgets/link-sum/strings.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { drawnTexts, letterSize, outsideOf, touching } from './drawn-text.ts';

const FRAMES = ['wide', 'narrow', 'stage'] as const satisfies readonly ShapeFrame[];
const prepared: LinkSumState = defaultState(linkSumSpec.fields);
const ofLinks = (now: Partial<LinkSumState> = {}): Omit<ShapeProps, 'frame'> => {
  const values = { ...prepared, ...now };
  return figureOf(fieldsState<LinkSumFields>(values), wholeSumOf(sumOf(values)));
};

/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, { frame?: ShapeFrame; figure: () => Omit<ShapeProps, 'frame'> }>> = {
  'one box': { figure: () => ofLinks() },
  'two boxes, narrow': { frame: 'narrow', figure: () => ofLinks({ count: 2 }) },
  'four boxes on the wall': { frame: 'stage', figure: () => ofLinks({ count: 4 }) },
  'a U that rules': { figure: () => ofLinks({ count: 2, first: 0.9, firstShape: 'arcsine', second: 0.2 }) },
  'a bell without a worst case': { figure: () => ofLinks({ count: 2, secondShape: 'normal' }) },
  'before the whole is known': { figure: () => figureOf(fieldsState<LinkSumFields>(prepared)) },
};

function draw(name: string): string {
  const { frame = 'wide', figure } = named[name] ?? {};
  if (figure === undefined) throw new Error(`wish a named state, got ${name}`);
  return render(
    <Shape frame={frame} {...figure()} words={strings.axes} name="The shape" description="It shows" />,
  );
}

describe.each(Object.keys(named))('a shape, %s', (name) => {
  it('is drawn as it was before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('draws finite numbers only, asks for no style, and is the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('has a name, a description and one knob', () => {
    expect(draw(name)).toMatch(/<title id="[^"]+">The shape<\/title>/);
    expect(draw(name)).toMatch(/<desc id="[^"]+">It shows<\/desc>/);
    expect([...draw(name).matchAll(/data-handle="part"/g)]).toHaveLength(1);
  });
});

describe('what a shape shows', () => {
  it('is a strip only once the whole is known, and end marks only where there are limits', () => {
    expect(draw('one box')).toContain('band-strip');
    expect(draw('one box')).toContain('plot-limit');
    expect(draw('before the whole is known')).not.toContain('band-strip');
    expect(draw('before the whole is known')).not.toContain('band-curve');
    expect(draw('a bell without a worst case')).not.toContain('plot-limit');
    expect(draw('a bell without a worst case')).toContain('no limit');
  });

  it('is the first link alone as a thin line, where there are others', () => {
    expect(ofLinks().part).toEqual([]);
    expect(ofLinks({ count: 2 }).part?.length).toBeGreaterThan(50);
    expect(ofLinks({ count: 2, firstShape: 'normal' }).part?.length).toBeGreaterThan(50);
  });
});

describe.each(FRAMES)('its coordinates, %s', (frame) => {
  const place = fc.double({ min: -10, max: 10, noNaN: true });

  it('come back as the value that they were made from, where the knob is pulled', () => {
    fc.assert(
      fc.property(place, (x) => {
        const { scale } = shapeLayout({ ...ofLinks(), frame });
        expect(scale.invert(scale(x))).toBeCloseTo(x, 9);
      }),
    );
  });

  it('keep everything between the ends of the axis, and the curves under their top', () => {
    fc.assert(
      fc.property(place, place, fc.double({ min: 0.01, max: 100, noNaN: true }), (a, b, density) => {
        const { measures, lanes, line, handleX } = shapeLayout({
          frame,
          domain: { lower: -1, upper: 1 },
          curve: [
            { x: a, density },
            { x: b, density: 0 },
          ],
          compared: [{ x: 0, density: 1 }],
          lanes: [
            {
              id: 'one',
              kind: 'strip',
              label: '',
              number: '',
              interval: { lower: Math.min(a, b), upper: Math.max(a, b) },
            },
          ],
          handle: a,
        });
        const [left, right] = measures.across;
        const [top, ground] = measures.down;
        const [lane] = lanes;
        expect(lane?.x).toBeGreaterThanOrEqual(left);
        expect((lane?.x ?? 0) + (lane?.width ?? 0)).toBeLessThanOrEqual(right + 0.01);
        expect(handleX).toBeGreaterThanOrEqual(left);
        expect(handleX).toBeLessThanOrEqual(right);
        for (const [, x, y] of line.matchAll(/([\d.]+) ([\d.]+)/g)) {
          expect(Number(x)).toBeGreaterThanOrEqual(left);
          expect(Number(x)).toBeLessThanOrEqual(right);
          expect(Number(y)).toBeGreaterThanOrEqual(top);
          expect(Number(y)).toBeLessThanOrEqual(ground);
        }
      }),
    );
  });

  it('bring both ends of the filled shape down to the ground', () => {
    const { area, line, measures } = shapeLayout({ ...ofLinks({ count: 3 }), frame });
    expect(area.startsWith('M')).toBe(true);
    expect(area).toBe(`${line}Z`);
    expect(area.split(/[ML]/)[1]).toMatch(new RegExp(` ${measures.down[1]}$`));
    expect(shapeLayout({ ...ofLinks(), curve: [], frame }).area).toBe('');
  });
});

describe('letters', () => {
  it.each(['wide', 'narrow'] as const)('are never written into each other or cut off, %s', (frame) => {
    const size = letterSize(frame === 'narrow' ? '.plot-narrow text' : '.plot text');
    for (const now of [
      {},
      { count: 5 },
      { count: 2, first: 10 },
      { count: 4, sizes: 'standard', coverage: 'ninetyFive', first: 10 },
      { count: 2, secondShape: 'normal' },
    ] as const satisfies readonly Partial<LinkSumState>[]) {
      const markup = render(
        <Shape frame={frame} {...ofLinks(now)} words={strings.axes} name="The" description="It" />,
      );
      const texts = drawnTexts(markup, { size });
      expect(texts.length).toBeGreaterThan(8);
      expect(touching(texts)).toEqual([]);
      expect(outsideOf(markup, texts, 14)).toEqual([]);
    }
  });

  it('are those of a frame that there is', () => {
    expect(FRAMES.every(isShapeFrame)).toBe(true);
    expect(isShapeFrame('poster')).toBe(false);
    expect(isShapeFrame(undefined)).toBe(false);
  });
});
