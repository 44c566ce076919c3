import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { LaidLengths } from '../../src/figures/LaidLengths.tsx';
import { isLaidFrame, type LaidFrame, laidMeasures } from '../../src/figures/laid-lengths.frame.ts';
import { laidLayout } from '../../src/figures/laid-lengths.layout.ts';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import { BETWEEN, METER_SAYS } from '../../src/sheet/pads-in-a-row.ts';
import { figureOf } from '../../src/widgets/pads-in-a-row/figure.ts';
import {
  CLAIMS,
  LAYS,
  type Lay,
  type RowFields,
  type RowState,
  rowOf,
  rowSpec,
} from '../../src/widgets/pads-in-a-row/spec.ts';
import { figureWords } from '../../src/widgets/pads-in-a-row/words.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';

const FRAMES = ['wide', 'narrow', 'stage'] as const satisfies readonly LaidFrame[];
const stateOf = (lay: Lay, now: Partial<RowState> = {}): RowState => ({
  ...defaultState(rowSpec(lay).fields),
  ...now,
});

function figure(lay: Lay, now: Partial<RowState> = {}, known = true) {
  const values = stateOf(lay, now);
  const whole = known ? wholeRowOf(rowOf(values)) : undefined;
  return {
    ...figureOf(lay, fieldsState<RowFields>(values), whole),
    words: figureWords(lay, values, whole),
  };
}

interface Drawn {
  readonly lay: Lay;
  readonly now?: Partial<RowState>;
  readonly frame?: LaidFrame;
  readonly known?: boolean;
  readonly handle?: boolean;
}
const draw = ({ lay, now = {}, frame = 'wide', known = true, handle = true }: Drawn): string =>
  render(
    <LaidLengths
      frame={frame}
      {...figure(lay, now, known)}
      name="The lengths"
      description="They show"
      handle={handle}
    />,
  );
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, Drawn>> = {
  'three pads and a meter end to end': { lay: 'straight' },
  'three pads and a meter end to end, narrow': { lay: 'straight', frame: 'narrow' },
  'three pads and a meter end to end, on the wall': { lay: 'straight', frame: 'stage' },
  'a meter without a limit': { lay: 'straight', now: { says: 'certificate' } },
  'the root called a limit': { lay: 'straight', now: { claim: 'root' } },
  'at right angles': { lay: 'angles' },
  'at right angles, on the wall': { lay: 'angles', frame: 'stage' },
  'eight pads at right angles, narrow': { lay: 'angles', now: { count: 8, meter: 0.3 }, frame: 'narrow' },
};

describe.each(Object.entries(named))('lengths, %s', (_name, drawn) => {
  it('are drawn as they were before', () => {
    expect(draw(drawn).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draw finite numbers only, ask for no style, and have one handle or none', () => {
    expect(draw(drawn)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(count(draw(drawn), /data-handle="at"/g)).toBe(1);
    expect(draw({ ...drawn, handle: false })).not.toContain('data-handle');
  });
});

describe('what the lengths show', () => {
  it('is a piece for each part, the last one dashed where it has no limit', () => {
    const pieces = (now: Partial<RowState>) =>
      laidLayout({ frame: 'wide', ...figure('straight', now) }).pieces;
    expect(pieces({})).toHaveLength(4);
    expect(pieces({ meter: 0 })).toHaveLength(3);
    expect(pieces({}).some(({ endless }) => endless)).toBe(false);
    expect(pieces({ says: 'certificate' }).map(({ endless }) => endless)).toEqual([
      false,
      false,
      false,
      true,
    ]);
    expect(pieces({ says: 'certificate', meter: 0 }).some(({ endless }) => endless)).toBe(false);
  });

  it('is a strip and a curve end to end, a path and its result at right angles', () => {
    expect(draw({ lay: 'straight' })).toContain('band-strip');
    expect(draw({ lay: 'angles' })).not.toContain('band-strip');
    expect(laidLayout({ frame: 'wide', ...figure('straight') }).path).toBeUndefined();
    expect(laidLayout({ frame: 'wide', ...figure('angles') }).curve).toBe('');
  });

  it('is no strip and no curve as long as they are being worked out', () => {
    const waiting = draw({ lay: 'straight', known: false });
    expect(waiting).not.toContain('band-strip');
    expect(waiting).toContain('being worked out');
    expect(laidLayout({ frame: 'wide', ...figure('straight', {}, false) }).curve).toBe('');
  });

  it('is a dashed line where somebody says something', () => {
    expect(draw({ lay: 'straight' })).not.toContain('plot-ghost');
    expect(count(draw({ lay: 'straight', now: { claim: 'root' } }), /plot-ghost/g)).toBe(1);
  });
});

describe('their coordinates', () => {
  const frame = fc.constantFrom(...FRAMES);
  const lay = fc.constantFrom(...LAYS);
  const state = fc.record({
    count: fc.integer({ min: 2, max: 8 }),
    pad: fc.integer({ min: 1, max: 20 }).map((steps) => steps / 20),
    meter: fc.integer({ min: 0, max: 40 }).map((steps) => steps / 20),
    between: fc.constantFrom(...BETWEEN),
    says: fc.constantFrom(...METER_SAYS),
    claim: fc.constantFrom(...CLAIMS),
  });

  it('lie on the axis and within the room above the bars, and come back where the knob is pulled', () => {
    fc.assert(
      fc.property(frame, lay, state, (name, how, now) => {
        const given = figure(how, now, false);
        const drawing = laidLayout({ frame: name, ...given });
        const { across, above, corner } = drawing.measures;
        for (const x of [drawing.end, drawing.knobX, drawing.saidX ?? across[0]]) {
          expect(x).toBeGreaterThanOrEqual(across[0]);
          expect(x).toBeLessThanOrEqual(across[1]);
        }
        for (const { x, y } of drawing.path?.corners ?? []) {
          expect(x).toBeGreaterThanOrEqual(across[0] - 0.01);
          expect(x).toBeLessThanOrEqual(across[1]);
          expect(y).toBeGreaterThanOrEqual(above[0] - corner / 2);
          expect(y).toBeLessThanOrEqual(above[1] + 0.01);
        }
        expect(drawing.scale.invert(drawing.scale(given.knob))).toBeCloseTo(given.knob, 9);
      }),
    );
  });

  it('have one scale: the path’s last corner is as far from its start as the second bar is long', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { path, result = 0 } = laidLayout({ frame: name, ...figure('angles', now, false) });
        const [, startX, startY] = /^M([\d.-]+) ([\d.-]+)/.exec(path?.lengths ?? '') ?? [];
        const last = path?.corners.at(-1) ?? { x: 0, y: 0 };
        expect(Math.hypot(last.x - Number(startX), last.y - Number(startY))).toBeCloseTo(result, 1);
      }),
    );
  });

  it('keep the curve on the axis, a bell’s too', () => {
    const now = { says: 'certificate', pad: 0.1, meter: 1 } as const;
    const { curve, measures } = laidLayout({ frame: 'wide', ...figure('straight', now) });
    for (const [, x] of curve.matchAll(/[ML]([\d.]+) /g))
      expect(Number(x)).toBeLessThanOrEqual(measures.across[1]);
  });

  it('lie in frames with room for their words', () => {
    for (const name of FRAMES) {
      const { height, axis, wordsDrop, width, across } = laidMeasures(name);
      expect(axis + wordsDrop).toBeLessThan(height);
      expect(across[1]).toBeLessThan(width);
    }
    expect(isLaidFrame('stage')).toBe(true);
    expect(isLaidFrame('valueOf')).toBe(false);
    expect(isLaidFrame(undefined)).toBe(false);
  });

  it('are refused where nothing has a length', () => {
    const given = { ...figure('straight'), lengths: [], reach: { lengths: [], farthest: 0 } };
    expect(() => laidLayout({ frame: 'wide', ...given })).toThrow(
      'laidSpan: something must have a length, got 0',
    );
  });
});
