import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { Envelope } from '../../src/figures/Envelope.tsx';
import type { EnvelopeFrame } from '../../src/figures/envelope.frame.ts';
import { PowerShares } from '../../src/figures/PowerShares.tsx';
import { figureOf, meantMark, shareRows } from '../../src/widgets/envelope/figure.ts';
import { type KeyedState, keyedSpec } from '../../src/widgets/envelope/spec.ts';
import { strings } from '../../src/widgets/envelope/strings.ts';
import { envelopeLabels } from '../../src/widgets/envelope/words.ts';

const prepared = defaultState(keyedSpec.fields);

/** Every state of the figure that has a name, and a picture kept as markup. */
const named: Readonly<
  Record<string, { frame?: EnvelopeFrame; now?: Partial<KeyedState>; before?: KeyedState }>
> = {
  prepared: {},
  narrow: { frame: 'narrow' },
  stage: { frame: 'stage' },
  'key held down': { now: { keying: 'keyDown', kind: 'carrier' } },
  'a string of dits': { now: { keying: 'stringOfDits' } },
  'two equal tones': { now: { keying: 'twoEqualTones', kind: 'peakEnvelope' } },
  'a mean stated as PEP': { now: { slip: 'meanAsPeak' } },
  'a ghost': { now: { peak: 1 }, before: prepared },
};
const stateOf = (name: string): KeyedState => ({ ...prepared, ...named[name]?.now });

function draw(name: string): string {
  const values = stateOf(name);
  const { frame = 'wide', before } = named[name] ?? {};
  return render(
    <Envelope
      frame={frame}
      {...figureOf({ values, before, held: undefined, touched: false })}
      labels={envelopeLabels(values)}
      meant={meantMark(values)}
      axes={strings.axes}
      name="The envelope"
      description="What it shows"
      handle
    />,
  );
}
const bars = (name: string): string =>
  render(
    <PowerShares
      rows={shareRows(stateOf(name))}
      spoken={shareRows(stateOf(name), 'spoken')}
      name="In and out"
    />,
  );

describe.each(Object.keys(named))('the envelope, %s', (name) => {
  it('is drawn as it was before, and so are its bars', () => {
    expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot();
    expect(bars(name).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws finite numbers only, asks for no style, and is the same each time', () => {
    expect(draw(name) + bars(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('has a name, a description and one handle', () => {
    expect(draw(name)).toMatch(/role="img"[\s\S]*<title[^>]*>The envelope<\/title><desc[^>]*>What it shows/);
    expect([...draw(name).matchAll(/data-handle="([^"]+)"/g)].map(([, id]) => id)).toEqual(['peak']);
  });
});

describe('the envelope', () => {
  it('marks the carrier where there is one, and tells which mark is meant', () => {
    expect(draw('key held down')).toMatch(/class="plot-strong"[^>]*>carrier 500/);
    expect(draw('two equal tones')).not.toContain('carrier');
    expect(draw('prepared')).toMatch(/class="plot-strong"[^>]*>mean 220/);
  });

  it('has a bar for the supply where the efficiency is known, and one for the wave always', () => {
    const count = (markup: string): number => markup.split('plot-dot').length - 1;
    expect([count(bars('prepared')), count(bars('two equal tones'))]).toEqual([2, 1]);
  });
});
