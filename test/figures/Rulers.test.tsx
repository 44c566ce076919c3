import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { Rulers } from '../../src/figures/Rulers.tsx';
import type { BandFrame } from '../../src/figures/reading-band.frame.ts';
import { rulerStates } from './ruler-states.ts';

const words = { name: 'The rulers', description: 'What they show' };
const draw = (state: string, frame: BandFrame = 'wide'): string => {
  const figure = rulerStates[state]?.();
  if (!figure) throw new Error(`Rulers test: wish a named state, got ${state}`);
  return render(<Rulers frame={frame} {...figure} {...words} />);
};
const states = Object.keys(rulerStates);
const frames: readonly BandFrame[] = ['wide', 'narrow', 'stage'];

describe('the rulers', () => {
  it.each(states)('are drawn as they were before: %s', (state) => {
    expect(draw(state).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it.each(states)('draw finite numbers only, and ask for no style of their own: %s', (state) => {
    for (const frame of frames) expect(draw(state, frame)).not.toMatch(/NaN|Infinity|undefined| style=/);
  });

  it('have a name and a description for those who do not see them', () => {
    const markup = draw(states[0] ?? '');
    const [, title] = /aria-labelledby="([^"]+)"/.exec(markup) ?? [];
    expect(markup).toContain(`<title id="${title}">The rulers</title>`);
    expect(markup).toMatch(/<desc id="[^"]+">What they show<\/desc>/);
    expect(markup).toContain('role="img"');
  });
});
