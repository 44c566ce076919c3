import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { LineBand } from '../../src/figures/LineBand.tsx';
import type { LineBandFrame } from '../../src/figures/line-band.frame.ts';
import { type LineBandProps, lineBandLayout, spanFor } from '../../src/figures/line-band.layout.ts';
import { figureOf as detectorFigure } from '../../src/widgets/detector/figure.ts';
import { type DetectorFields, type DetectorState, detectorSpec } from '../../src/widgets/detector/spec.ts';
import { strings as detectorStrings } from '../../src/widgets/detector/strings.ts';
import { figureOf as meterFigure } from '../../src/widgets/own-meter/figure.ts';
import { meterSpec } from '../../src/widgets/own-meter/spec.ts';
import { strings as meterStrings } from '../../src/widgets/own-meter/strings.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { figureOf as scopeFigure } from '../../src/widgets/scope/figure.ts';
import { type ScopeFields, type ScopeState, scopeSpec } from '../../src/widgets/scope/spec.ts';
import { strings as scopeStrings } from '../../src/widgets/scope/strings.ts';
import { figureOf as rulesFigure } from '../../src/widgets/two-rules/figure.ts';
import { rulesSpec } from '../../src/widgets/two-rules/spec.ts';
import { strings as rulesStrings } from '../../src/widgets/two-rules/strings.ts';
import { figureOf as backFigure } from '../../src/widgets/what-comes-back/figure.ts';
import { type BackFields, type BackState, backSpec } from '../../src/widgets/what-comes-back/spec.ts';
import { strings as backStrings } from '../../src/widgets/what-comes-back/strings.ts';

const rules = defaultState(rulesSpec.fields);
const meter = defaultState(meterSpec.fields);
const ofRules = (now: Partial<typeof rules> = {}, before?: typeof rules) =>
  rulesFigure({ ...fieldsState<typeof rulesSpec.fields>({ ...rules, ...now }), before });
const ofMeter = (now: Partial<typeof meter> = {}) =>
  meterFigure(fieldsState<typeof meterSpec.fields>({ ...meter, ...now }));

const ofScope = (now: Partial<ScopeState> = {}) =>
  scopeFigure(fieldsState<ScopeFields>({ ...defaultState(scopeSpec.fields), ...now }));

const ofDetector = (now: Partial<DetectorState> = {}) =>
  detectorFigure(fieldsState<DetectorFields>({ ...defaultState(detectorSpec.fields), ...now }));

const ofBack = (now: Partial<BackState> = {}) =>
  backFigure(fieldsState<BackFields>({ ...defaultState(backSpec.fields), ...now }));

type Figure = Omit<LineBandProps, 'frame'>;
/** Every state that has a name, and a picture kept as markup. */
const named: Readonly<
  Record<
    string,
    { frame?: LineBandFrame; figure: () => Figure; of: 'rules' | 'meter' | 'scope' | 'detector' | 'back' }
  >
> = {
  'the club’s frame': { figure: () => ofRules(), of: 'rules' },
  'the club’s frame, narrow': { frame: 'narrow', figure: () => ofRules(), of: 'rules' },
  'the club’s frame on the wall': { frame: 'stage', figure: () => ofRules(), of: 'rules' },
  'rules compared, tenths': { figure: () => ofRules({ known: 'compared', step: 'tenth' }), of: 'rules' },
  'what the makers promise, and what was claimed before': {
    figure: () => ofRules({ known: 'promise' }, rules),
    of: 'rules',
  },
  'the club’s meter': { figure: () => ofMeter(), of: 'meter' },
  'the meter, corrected, three years later': {
    figure: () => ofMeter({ treatment: 'corrected', months: 36 }),
    of: 'meter',
  },
  'the club’s oscilloscope': { figure: () => ofScope(), of: 'scope' },
  'the club’s oscilloscope on the wall': { frame: 'stage', figure: () => ofScope(), of: 'scope' },
  'an oscilloscope out of range, narrow': {
    frame: 'narrow',
    figure: () => ofScope({ frequency: 145 }),
    of: 'scope',
  },
  'the club’s detector': { figure: () => ofDetector(), of: 'detector' },
  'the club’s detector, narrow': { frame: 'narrow', figure: () => ofDetector(), of: 'detector' },
  'a detector below its range, on the wall': {
    frame: 'stage',
    figure: () => ofDetector({ detected: 0.6 }),
    of: 'detector',
  },
  'the club’s line': { figure: () => ofBack(), of: 'back' },
  'a lossy line on the wall': { frame: 'stage', figure: () => ofBack({ loss: 3 }), of: 'back' },
  'the meter with its screw turned': { figure: () => ofMeter({ treatment: 'adjusted' }), of: 'meter' },
};

function draw(name: string, handle = true): string {
  const { frame = 'wide', figure, of } = named[name] ?? {};
  if (figure === undefined || of === undefined) throw new Error(`wish a named state, got ${name}`);
  const words = {
    meter: meterStrings,
    rules: rulesStrings,
    scope: scopeStrings,
    detector: detectorStrings,
    back: backStrings,
  }[of].axes;
  return render(
    <LineBand
      frame={frame}
      {...figure()}
      words={words}
      name="The line"
      description="It shows"
      handle={handle}
    />,
  );
}
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

describe.each(Object.keys(named))('a line over a band, %s', (name) => {
  it('is drawn as it was before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('draws finite numbers only, asks for no style, and is the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('has a name, a description and one handle, or none', () => {
    const markup = draw(name);
    expect(markup).toMatch(/<title id="[^"]+">The line<\/title>/);
    expect(markup).toMatch(/<desc id="[^"]+">It shows<\/desc>/);
    expect(count(markup, /data-handle="at"/g)).toBe(1);
    expect(draw(name, false)).not.toContain('data-handle');
  });
});

describe('what a line over a band shows', () => {
  it('is no band where nobody can say, and no limit where none applies', () => {
    const turned = draw('the meter with its screw turned');
    expect(turned).not.toContain('band-strip');
    expect(turned).toContain('band-specification');
    const corrected = draw('the meter, corrected, three years later');
    expect(corrected).toContain('band-strip');
    expect(corrected).not.toContain('band-specification');
  });

  it('is the band of the first day as an outline, once months have gone by', () => {
    expect(draw('the club’s meter')).toContain('band-ghost');
    expect(ofMeter({ months: 0 }).ghost).toBeUndefined();
    expect(draw('the club’s frame')).not.toContain('band-ghost');
  });

  it('is a circle for each line of the certificate, and what is looked at', () => {
    expect(count(draw('the club’s meter'), /class="plot-point"/g)).toBe(4);
    expect(count(draw('the club’s meter'), /class="plot-here"/g)).toBe(1);
  });
});

describe('where a method ends', () => {
  it('is an upright line with its name, on the side where there is room for it', () => {
    expect(draw('the club’s oscilloscope')).toContain('the method ends');
    expect(draw('the club’s meter')).not.toContain('the method ends');
    const edge = (of: LineBandFrame, now: Partial<ScopeState>) =>
      lineBandLayout({ frame: of, ...ofScope(now) }).edge;
    expect(edge('wide', {})?.ends).toBe(true);
    expect(edge('wide', { frequency: 145 })?.ends).toBe(false);
    const { x = 0, wordsX = 0 } = edge('stage', {}) ?? {};
    expect(wordsX).toBeLessThan(x);
  });

  it('is no point where nothing can be said, and the line down to the axis stays', () => {
    const out = draw('an oscilloscope out of range, narrow');
    expect(out).not.toContain('class="plot-here"');
    expect(count(out, /data-handle="at"/g)).toBe(1);
    const { at, measures } = lineBandLayout({ frame: 'narrow', ...ofScope({ frequency: 145 }) });
    expect(at).toMatchObject({ known: false, y: measures.down[0] });
  });
});

describe('an axis from nothing up', () => {
  it('has nothing at its foot, and no tick below', () => {
    const { zeroY, measures, up } = lineBandLayout({ frame: 'wide', ...ofBack() });
    expect(zeroY).toBe(measures.down[1]);
    expect(up.every(({ value }) => value >= 0)).toBe(true);
    expect(lineBandLayout({ frame: 'wide', ...ofMeter() }).zeroY).toBeLessThan(measures.down[1]);
  });
});

describe('its coordinates', () => {
  const frame = fc.constantFrom<LineBandFrame>('wide', 'narrow', 'stage');
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const figure = (at: { x: number; y: number }): Figure => ({
    domain: { lower: 0, upper: 100 },
    span: 2,
    line: [{ x: 0, y: 0 }, at],
    band: [
      { x: 0, lower: -1, upper: 1 },
      { x: 100, lower: -1.5, upper: 1 },
    ],
    limit: 1.2,
    at,
  });

  it('come back as the value that they were made from, where a knob is pulled', () => {
    fc.assert(
      fc.property(frame, number(0, 100), (name, x) => {
        const { scaleX } = lineBandLayout({ frame: name, ...figure({ x, y: 0 }) });
        expect(scaleX.invert(scaleX(x))).toBeCloseTo(x, 9);
      }),
    );
  });

  it('lie within the plot for everything within domain and span, and the frame holds the plot', () => {
    fc.assert(
      fc.property(frame, number(0, 100), number(-2, 2), (name, x, y) => {
        const { at, measures, limits } = lineBandLayout({ frame: name, ...figure({ x, y }) });
        const [left, right] = measures.across;
        const [top, bottom] = measures.down;
        expect(at.x).toBeGreaterThanOrEqual(left);
        expect(at.x).toBeLessThanOrEqual(right);
        expect(at.y).toBeGreaterThanOrEqual(top);
        expect(at.y).toBeLessThanOrEqual(bottom);
        expect(limits?.upper).toBeLessThan(limits?.lower ?? 0);
        expect(right).toBeLessThan(measures.width);
        expect(bottom + measures.wordsDrop).toBeLessThan(measures.height);
      }),
    );
  });

  it('are higher up for more, and farther right for more', () => {
    fc.assert(
      fc.property(frame, number(0, 49), number(-2, -0.1), (name, x, y) => {
        const low = lineBandLayout({ frame: name, ...figure({ x, y }) });
        const high = lineBandLayout({ frame: name, ...figure({ x: x + 50, y: y + 2 }) });
        expect(high.at.x).toBeGreaterThan(low.at.x);
        expect(high.at.y).toBeLessThan(low.at.y);
      }),
    );
  });

  it('have an upright axis that holds what reaches farthest, with room for a name', () => {
    fc.assert(
      fc.property(number(0.001, 200), (reach) => {
        expect(spanFor(reach)).toBeGreaterThanOrEqual(1.2 * reach);
        expect(spanFor(1.1 * reach)).toBeGreaterThanOrEqual(spanFor(reach));
      }),
    );
  });
});
