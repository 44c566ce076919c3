import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { Trace } from '../../src/figures/Trace.tsx';
import type { TraceFrame } from '../../src/figures/trace.frame.ts';
import { figureOf } from '../../src/widgets/trace/figure.ts';
import { type TraceState, traceSpec } from '../../src/widgets/trace/spec.ts';
import { strings } from '../../src/widgets/trace/strings.ts';
import { traceLabels } from '../../src/widgets/trace/words.ts';

const prepared = defaultState(traceSpec.fields);

/** Every state of the figure that has a name, and a picture kept as markup. */
const named: Readonly<
  Record<string, { frame?: TraceFrame; now?: Partial<TraceState>; before?: TraceState }>
> = {
  prepared: {},
  narrow: { frame: 'narrow' },
  stage: { frame: 'stage' },
  'a square wave': { now: { wave: 'square' } },
  'a triangle with its slip': { now: { wave: 'triangle', slip: 'sineForAll' } },
  'the height taken for RMS': { now: { slip: 'wholeAsRms' } },
  'a ghost': { now: { peakToPeak: 20 }, before: prepared },
};

function draw(name: string, handle = true): string {
  const { frame = 'wide', now = {}, before } = named[name] ?? {};
  const values = { ...prepared, ...now };
  return render(
    <Trace
      frame={frame}
      {...figureOf({ values, before, held: undefined, touched: false })}
      labels={traceLabels(values)}
      axes={strings.axes}
      name="The trace"
      description="What it shows"
      handle={handle}
    />,
  );
}

describe.each(Object.keys(named))('the trace, %s', (name) => {
  it('is drawn as it was before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('draws finite numbers only, asks for no style, and is the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('has a name, a description and one handle', () => {
    expect(draw(name)).toMatch(/role="img"[\s\S]*<title[^>]*>The trace<\/title><desc[^>]*>What it shows/);
    expect([...draw(name).matchAll(/data-handle="([^"]+)"/g)].map(([, id]) => id)).toEqual(['crest']);
    expect(draw(name, false)).not.toContain('data-handle');
  });
});

describe('the trace', () => {
  it('draws a ghost and a slipped mean only where there is one', () => {
    expect(draw('prepared')).not.toMatch(/plot-ghost|plot-slipped/);
    expect(draw('a ghost')).toContain('plot-ghost');
    expect(draw('the height taken for RMS')).toContain('plot-slipped');
  });
});
