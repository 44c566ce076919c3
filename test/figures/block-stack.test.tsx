import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { BlockStack } from '../../src/figures/BlockStack.tsx';
import { type BlockFrame, blockMeasures, isBlockFrame } from '../../src/figures/block-stack.frame.ts';
import {
  type BlockStackProps,
  blockSpanFor,
  blockStackLayout,
} from '../../src/figures/block-stack.layout.ts';
import { wholeClaimOf } from '../../src/sheet/evaluated-blocks.ts';
import { figureOf } from '../../src/widgets/gauge-blocks/figure.ts';
import {
  type BlocksFields,
  type BlocksState,
  blocksSpec,
  comparisonOf,
} from '../../src/widgets/gauge-blocks/spec.ts';
import { strings } from '../../src/widgets/gauge-blocks/strings.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';

const club = defaultState(blocksSpec.fields);
const of = (now: Partial<BlocksState> = {}, before?: BlocksState): Omit<BlockStackProps, 'frame'> => {
  const values = { ...club, ...now };
  return figureOf({ ...fieldsState<BlocksFields>(values), before }, wholeClaimOf(comparisonOf(values)));
};

type State = { readonly frame?: BlockFrame; readonly figure: () => Omit<BlockStackProps, 'frame'> };
/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, State>> = {
  'straight from the hands': { figure: () => of() },
  'straight from the hands, narrow': { frame: 'narrow', figure: () => of() },
  'straight from the hands, on the wall': { frame: 'stage', figure: () => of() },
  'left to lie, and what it was before': { figure: () => of({ stackC: 20 }, club) },
  'one side cooled': { figure: () => of({ stackC: 20, singleC: 17 }) },
  'aluminium in a warm room': { figure: () => of({ stackC: 23, singleC: 23, singlePpm: 23.1 }) },
  'limits of the grade, four blocks': { figure: () => of({ stackC: 20, count: 4, known: 'grade' }) },
  'thermometers on both': { figure: () => of({ counted: 'each' }) },
  'one block against one, nothing known': { figure: () => of({ count: 1, known: 'nominal' }) },
};

function draw(name: string, handle = true): string {
  const { frame = 'wide', figure } = named[name] ?? {};
  if (figure === undefined) throw new Error(`wish a named state, got ${name}`);
  return render(
    <BlockStack
      frame={frame}
      {...figure()}
      words={strings.figure}
      name="The blocks"
      description="They show"
      handle={handle}
    />,
  );
}
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

describe.each(Object.keys(named))('the blocks, %s', (name) => {
  it('are drawn as they were before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('are drawn with finite numbers only, ask for no style, and are the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('have a name, a description and a handle on each side, or none', () => {
    const markup = draw(name);
    expect(markup).toMatch(/<title id="[^"]+">The blocks<\/title>/);
    expect(markup).toMatch(/<desc id="[^"]+">They show<\/desc>/);
    expect(count(markup, /data-handle="(stack|single)"/g)).toBe(2);
    expect(draw(name, false)).not.toContain('data-handle');
  });

  it('say how many times the ends are magnified, and name nothing on the axis', () => {
    expect(draw(name)).toMatch(/ends magnified \d+\u00a0000 times/);
    expect(draw(name)).toMatch(/anchor-middle">0(\.0+)?</);
  });
});

describe('what the blocks show', () => {
  it('is hatching where warmth adds, and a dashed outline where cold takes away', () => {
    expect(draw('straight from the hands')).toMatch(/<rect fill="url\(#[^)]+\)"/);
    expect(count(draw('one side cooled'), /class="plot-ghost"/g)).toBe(1);
    expect(count(draw('straight from the hands'), /class="plot-ghost"/g)).toBe(0);
  });

  it('is where an end was before the last change, if it moved', () => {
    expect(count(draw('left to lie, and what it was before'), /class="plot-ghost"/g)).toBe(1);
    expect(of({ known: 'grade' }, club).lanes.map(({ ghost }) => ghost)).toEqual([undefined, undefined]);
  });

  it('is firm end marks for limits, open ones outside the strip for certificates, none inside it', () => {
    const marks = (now: Partial<BlocksState>): string =>
      blockStackLayout({ frame: 'wide', ...of(now) }).claim.marks;
    expect(marks({ known: 'grade' })).toMatch(/^M[\d.]+ [\d.]+V/);
    expect(marks({ counted: 'each' })).toMatch(/^M[\d.]+ [\d.]+L/);
    expect(marks({})).toBe('');
  });

  it('is a curve where there is one', () => {
    expect(draw('limits of the grade, four blocks')).toContain('class="band-curve"');
    expect(draw('one block against one, nothing known')).not.toContain('class="band-curve"');
  });
});

const frame = fc.constantFrom<BlockFrame>('wide', 'narrow', 'stage');
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('their coordinates', () => {
  const lane = (id: 'stack' | 'single', end: number, cold: number) =>
    ({ id, label: '', number: '', detail: '', lengthsMm: [60, 40], end, cold }) as const;
  const figure = (span: number, end: number, cold: number): Omit<BlockStackProps, 'frame'> => ({
    span,
    lanes: [lane('stack', end, cold), lane('single', 0, 0)],
    claim: {
      label: '',
      number: '',
      detail: '',
      there: end,
      strip: { lower: -0.1, upper: 0.1 },
      limits: { lower: -0.2, upper: 0.2, open: false },
      curve: [],
    },
  });

  it('come back as the value that they were made from, where an end is pulled', () => {
    fc.assert(
      fc.property(frame, number(0.5, 40), number(-1, 1), (name, span, share) => {
        const { scale } = blockStackLayout({ frame: name, ...figure(span, 0, 0) });
        expect(scale.invert(scale(share * span))).toBeCloseTo(share * span, 9);
      }),
    );
  });

  it('stay within the magnified part, even of what lies far beyond the axis', () => {
    fc.assert(
      fc.property(frame, number(-100, 100), number(-100, 100), (name, end, cold) => {
        const drawing = blockStackLayout({ frame: name, ...figure(4, end, cold) });
        const { zone } = drawing.measures;
        for (const x of [drawing.lanes[0]?.endX ?? Number.NaN, drawing.claim.there.x]) {
          expect(x).toBeGreaterThanOrEqual(zone[0]);
          expect(x).toBeLessThanOrEqual(zone[1]);
        }
        const { solid, warm } = drawing.lanes[0] ?? {};
        expect((warm?.x ?? 0) + (warm?.width ?? 0)).toBeLessThanOrEqual(zone[1] + 0.01);
        expect(solid?.width).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('are to scale at the left, and as many times larger at the right as is said', () => {
    fc.assert(
      fc.property(frame, number(0.5, 40), (name, span) => {
        const drawing = blockStackLayout({ frame: name, ...figure(span, 0, 0) });
        const [long, short] = drawing.lanes[0]?.blocks ?? [];
        expect((long?.width ?? 0) / (short?.width ?? 1)).toBeCloseTo(1.5, 2);
        const perMm = (long?.width ?? 0) / 60;
        const perUm = (drawing.scale(1) - drawing.scale(0)) * 1;
        expect(drawing.magnification / ((1000 * perUm) / perMm)).toBeCloseTo(1, 3);
      }),
    );
  });

  it('have an axis that holds what reaches farthest, in steps that do not move with every change', () => {
    fc.assert(
      fc.property(number(0.001, 100), (reach) => {
        expect(blockSpanFor(reach)).toBeGreaterThanOrEqual(1.14 * reach);
        expect(blockSpanFor(1.1 * reach)).toBeGreaterThanOrEqual(blockSpanFor(reach));
      }),
    );
    expect(new Set([0.1, 0.2, 0.3, 0.4].map(blockSpanFor)).size).toBe(1);
  });

  it('have frames of known names', () => {
    for (const name of ['wide', 'narrow', 'stage'] as const) {
      expect(isBlockFrame(name)).toBe(true);
      const { scaled, zone, width } = blockMeasures(name);
      expect(scaled[1]).toBeLessThan(zone[0]);
      expect(zone[1]).toBeLessThan(width);
    }
    expect(isBlockFrame('toString')).toBe(false);
    expect(isBlockFrame(undefined)).toBe(false);
  });
});
