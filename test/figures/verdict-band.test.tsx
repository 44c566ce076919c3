import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { VerdictBand } from '../../src/figures/VerdictBand.tsx';
import { isVerdictBandFrame, type VerdictBandFrame } from '../../src/figures/verdict-band.frame.ts';
import { type VerdictBandProps, verdictBandLayout } from '../../src/figures/verdict-band.layout.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/verdict/figure.ts';
import { type VerdictFields, type VerdictState, verdictSpec } from '../../src/widgets/verdict/spec.ts';
import { strings } from '../../src/widgets/verdict/strings.ts';

const club = defaultState(verdictSpec.fields);
type Figure = Omit<VerdictBandProps, 'frame'>;
const of = (now: Partial<VerdictState> = {}, before?: VerdictState): Figure =>
  figureOf({ ...fieldsState<VerdictFields>({ ...club, ...now }), before });

/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, { frame?: VerdictBandFrame; figure: () => Figure; along?: string }>> = {
  'the club’s reading': { figure: () => of() },
  'the club’s reading, narrow': { frame: 'narrow', figure: () => of() },
  'the club’s reading on the wall': { frame: 'stage', figure: () => of() },
  'pulled inside, and where it was': { figure: () => of({ reading: 27 }, club) },
  'simple acceptance': { figure: () => of({ rule: 'simple' }) },
  'guard bands that meet': { figure: () => of({ expanded: 1.7, reading: 27 }) },
  'a diode with one limit': { figure: () => of({ item: 'diode' }), along: strings.along.diode },
  'a container with a lower one': { figure: () => of({ item: 'container' }), along: strings.along.container },
  'one of a box of resistors': { figure: () => of({ item: 'resistors' }), along: strings.along.resistors },
};

function draw(name: string, handle = true): string {
  const { frame = 'wide', figure, along = strings.along.transmitter } = named[name] ?? {};
  if (figure === undefined) throw new Error(`wish a named state, got ${name}`);
  return render(
    <VerdictBand
      frame={frame}
      {...figure()}
      along={along}
      name="The bands"
      description="They show"
      handle={handle}
    />,
  );
}
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

describe.each(Object.keys(named))('two bands on one axis, %s', (name) => {
  it('are drawn as they were before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('draw finite numbers only, ask for no style, and are the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('have a name, a description and one handle, or none', () => {
    const markup = draw(name);
    expect(markup).toMatch(/<title id="[^"]+">The bands<\/title>/);
    expect(markup).toMatch(/<desc id="[^"]+">They show<\/desc>/);
    expect(count(markup, /data-handle="at"/g)).toBe(1);
    expect(draw(name, false)).not.toContain('data-handle');
  });
});

describe('what the two bands show', () => {
  const verdicts = (figure: Figure): readonly string[] =>
    verdictBandLayout({ frame: 'wide', ...figure }).zones.map(({ verdict }) => verdict);

  it('is what any reading would be called: five zones by a guard band, three without', () => {
    expect(verdicts(of())).toEqual(['outside', 'cant-tell', 'inside', 'cant-tell', 'outside']);
    expect(verdicts(of({ rule: 'simple' }))).toEqual(['outside', 'inside', 'outside']);
    expect(verdicts(of({ expanded: 1.7 }))).not.toContain('inside');
    expect(verdicts(of({ item: 'diode' }))).toEqual(['inside', 'cant-tell', 'outside']);
    expect(verdicts(of({ item: 'container' }))).toEqual(['outside', 'cant-tell', 'inside']);
  });

  it('is a hatch for the third word alone, and a darker piece of the bell beyond a limit', () => {
    expect(count(draw('simple acceptance'), /fill="url/g)).toBe(0);
    expect(count(draw('the club’s reading'), /fill="url/g)).toBe(2);
    expect(count(draw('the club’s reading'), /class="plot-beyond"/g)).toBe(1);
    expect(draw('pulled inside, and where it was')).not.toContain('plot-beyond');
  });

  it('is the strip before the last change as an outline, where that moved or widened it', () => {
    expect(draw('pulled inside, and where it was')).toContain('band-ghost');
    expect(of({ upper: 29 }, club).ghost).toBeUndefined();
    expect(of({ item: 'diode' }, club).ghost).toBeUndefined();
    expect(of({ expanded: 0.5 }, club).ghost).toEqual({ lower: 28.2 - 0.69, upper: 28.2 + 0.69 });
  });

  it('is a limit with its barb to the side that is allowed', () => {
    const limits = (figure: Figure) => verdictBandLayout({ frame: 'wide', ...figure }).limits;
    expect(limits(of()).map(({ value, allowed }) => [value, allowed])).toEqual([
      [25.5, 1],
      [28.5, -1],
    ]);
    expect(limits(of({ item: 'diode' })).map(({ value, allowed }) => [value, allowed])).toEqual([[-5.4, -1]]);
  });
});

describe('their coordinates', () => {
  const frame = fc.constantFrom<VerdictBandFrame>('wide', 'narrow', 'stage');
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const state = fc.record({ reading: number(24, 30), expanded: number(0.05, 2), upper: number(27.5, 29.5) });

  it('lie within the axis, whatever is read and however well', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { zones, strip, estimateX, measures } = verdictBandLayout({ frame: name, ...of(now) });
        const [left, right] = measures.across;
        for (const { x, width } of [...zones, strip]) {
          expect(x).toBeGreaterThanOrEqual(left - 0.01);
          expect(x + width).toBeLessThanOrEqual(right + 0.02);
        }
        expect(estimateX >= left && estimateX <= right).toBe(true);
        expect(measures.unitY).toBeLessThan(measures.height);
      }),
    );
  });

  it('leave no gap between the zones from end to end', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { zones, measures } = verdictBandLayout({ frame: name, ...of(now) });
        const end = zones.reduce<number>((x, zone) => {
          expect(zone.x).toBeCloseTo(x, 1);
          return zone.x + zone.width;
        }, measures.across[0]);
        expect(end).toBeCloseTo(measures.across[1], 1);
      }),
    );
  });

  it('come back as the reading that they were made from, and do not move the axis', () => {
    fc.assert(
      fc.property(frame, state, (name, now) => {
        const { scale } = verdictBandLayout({ frame: name, ...of(now) });
        expect(scale.invert(scale(now.reading))).toBeCloseTo(now.reading, 9);
        expect(scale(27)).toBe(verdictBandLayout({ frame: name, ...of() }).scale(27));
      }),
    );
  });

  it('know their frames by name', () => {
    expect(['wide', 'narrow', 'stage'].every(isVerdictBandFrame)).toBe(true);
    expect([undefined, 'poster', 'toString'].some(isVerdictBandFrame)).toBe(false);
  });
});
