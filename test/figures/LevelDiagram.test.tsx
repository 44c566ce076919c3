import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { LevelDiagram } from '../../src/figures/LevelDiagram.tsx';
import type { LevelFrame } from '../../src/figures/level-diagram.frame.ts';
import { figureOf } from '../../src/widgets/level-diagram/figure.ts';
import { type LineState, stairsSpec } from '../../src/widgets/level-diagram/spec.ts';

const prepared = defaultState(stairsSpec.fields);

/** Every state of the figure that has a name, and a picture kept as markup. */
const named: Readonly<Record<string, { frame?: LevelFrame; now?: Partial<LineState>; before?: LineState }>> =
  {
    prepared: {},
    narrow: { frame: 'narrow' },
    stage: { frame: 'stage' },
    'without the first pad': { now: { without: 'first' } },
    'an amplifier in front': { frame: 'narrow', now: { amplifier: 10 } },
    'to an antenna': { now: { end: 'antenna', coax: 0.6, antenna: 5 } },
    'dBi and dBd mixed up': { now: { end: 'antenna', antenna: 5, slip: 'reference' } },
    'pads forgotten': { now: { slip: 'forgotten' } },
    'a ghost': { now: { first: 10 }, before: prepared },
  };

function draw(name: string): string {
  const { frame = 'wide', now = {}, before } = named[name] ?? {};
  const values = { ...prepared, ...now };
  const figure = figureOf({ values, before, held: undefined, touched: false });
  return render(<LevelDiagram frame={frame} {...figure} name="The line" description="What it shows" />);
}
const handles = (markup: string) => [...markup.matchAll(/data-handle="([^"]+)"/g)].map(([, id]) => id);

describe.each(Object.keys(named))('the level diagram, %s', (name) => {
  it('is drawn as it was before', () => expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot());

  it('draws finite numbers only, asks for no style, and is the same each time', () => {
    expect(draw(name)).not.toMatch(/NaN|Infinity|undefined| style=/);
    expect(draw(name)).toBe(draw(name));
  });

  it('has a name and a description', () => {
    expect(draw(name)).toMatch(/role="img"[\s\S]*<title[^>]*>The line<\/title><desc[^>]*>What it shows/);
  });
});

describe('the level diagram', () => {
  it('has a handle for everything that has a number, and none for what follows from it', () => {
    expect(handles(draw('prepared'))).toEqual(['level', 'amplifier', 'first', 'coax', 'second']);
    expect(handles(draw('to an antenna'))).toEqual(['level', 'amplifier', 'coax', 'antenna']);
  });

  it('says in words, not only by a mark, where something gets too much', () => {
    expect(draw('prepared')).not.toContain('TOO MUCH');
    expect(draw('an amplifier in front')).toContain('TOO MUCH');
  });

  it('draws what is left out, a slip and a ghost only where there is one', () => {
    expect(draw('prepared')).not.toMatch(/plot-slipped|plot-ghost/);
    expect(draw('without the first pad')).toContain('plot-slipped');
    expect(draw('pads forgotten')).toContain('plot-slipped');
    expect(draw('dBi and dBd mixed up')).toContain('plot-slipped');
    expect(draw('a ghost')).toContain('plot-ghost');
  });
});
