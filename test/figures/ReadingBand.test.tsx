import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ReadingBand } from '../../src/figures/ReadingBand.tsx';
import { namedStates } from './demonstration.ts';

const words = { name: 'The band', description: 'What it shows' };
const draw = (state: string): string => {
  const props = namedStates[state]?.();
  if (!props) throw new Error(`ReadingBand test: wish a named state, got ${state}`);
  return render(<ReadingBand {...props} {...words} />);
};
const count = (markup: string, part: RegExp): number => [...markup.matchAll(part)].length;

describe('the reading band', () => {
  it.each(Object.keys(namedStates))('is drawn as it was before: %s', (state) => {
    expect(draw(state).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it.each(Object.keys(namedStates))(
    'draws finite numbers only, and asks for no style of its own: %s',
    (state) => {
      expect(draw(state)).not.toMatch(/NaN|Infinity|undefined| style=/);
    },
  );

  it.each(Object.keys(namedStates))('is the same each time it is drawn from the same data: %s', (state) => {
    expect(draw(state)).toBe(draw(state));
  });

  it('has a name and a description for those who do not see it', () => {
    const markup = draw('club');
    const [, title] = /aria-labelledby="([^"]+)"/.exec(markup) ?? [];
    expect(markup).toContain(`<title id="${title}">The band</title>`);
    expect(markup).toMatch(/<desc id="[^"]+">What it shows<\/desc>/);
    expect(markup).toContain('role="img"');
  });

  it('has one handle for every rung that can be dragged, and none for the definition and the socket', () => {
    expect([...draw('club').matchAll(/data-handle="([^"]+)"/g)].map(([, id]) => id)).toEqual([
      'national',
      'laboratory',
      'meter',
      'mismatch',
      'pad',
      'coax',
    ]);
  });

  it('draws a curve over each strip only when it is switched on', () => {
    expect(count(draw('club'), /class="band-curve"/g)).toBe(0);
    expect(count(draw('curve on'), /class="band-curve"/g)).toBe(7);
  });

  it('outlines what was there before on each rung that changed', () => {
    expect(count(draw('club'), /class="band-ghost"/g)).toBe(0);
    // pad, coax and socket: the rungs above the pad are as they were
    expect(count(draw('ghost'), /class="band-ghost"/g)).toBe(3);
  });

  it('gives a number the first line of a narrow row that has room for it beside letters set wide', () => {
    const state = 'club';
    const props = namedStates[state]?.();
    if (!props) throw new Error(`ReadingBand test: wish a named state, got ${state}`);
    const lineOf = (frame: 'narrow' | 'wide', now: { label: string; detail: string; number: string }) => {
      const { rows } = props;
      const markup = render(
        <ReadingBand {...props} {...words} frame={frame} rows={rows.map((row) => ({ ...row, ...now }))} />,
      );
      const ys = ['label', 'detail', 'number'].map((part) =>
        Number(new RegExp(`y="([\\d.]+)" class="band-${part}`).exec(markup)?.[1]),
      );
      return ys.map((y) => y - (ys[0] ?? 0));
    };
    const short = { label: 'Mismatch', detail: 'adds ±0.16 dB, U-shaped', number: '±0.37 dB' };
    expect(lineOf('narrow', short)).toEqual([0, 17, 0]);
    const long = { ...short, label: 'The meter that was lent' };
    expect(lineOf('narrow', long)).toEqual([0, 17, 17]);
    const both = { ...long, detail: 'adds s 0.06 dB, 5 readings' };
    expect(lineOf('narrow', both)).toEqual([0, 17, 32]);
    expect(lineOf('narrow', { ...short, number: '+0.64/−0.65 dB of more' })).toEqual([0, 17, 32]);
    expect(lineOf('wide', both)).toEqual(lineOf('wide', short));
  });

  it('writes what a row adds in two lines where it comes in two, and the number beside the second', () => {
    const props = namedStates.club?.();
    if (!props) throw new Error('ReadingBand test: wish a named state, got club');
    const now = { label: 'A pad whose name is rather long', detail: 'adds much\nmore', number: '±0.37 dB' };
    const rows = props.rows.map((row) => ({ ...row, ...now }));
    const markup = render(<ReadingBand {...props} {...words} frame="narrow" rows={rows} />);
    const [first, second] = [...markup.matchAll(/y="([\d.]+)" class="band-detail">([^<]*)</g)];
    expect([first?.[2], second?.[2]]).toEqual(['adds much', 'more']);
    expect(Number(second?.[1]) - Number(first?.[1])).toBe(15);
  });

  it('draws nothing but hairlines where nothing adds anything', () => {
    const markup = draw('everything zero');
    expect(count(markup, /class="band-strip"/g)).toBe(0);
    expect(count(markup, /class="band-exact"/g)).toBe(8);
  });

  it('names the unit of both axes once', () => {
    expect(count(draw('club'), />mW</g)).toBe(1);
    expect(count(draw('club'), />dBm</g)).toBe(1);
  });
});
