import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import StageBorrowed from '../../src/stage/StageBorrowed.tsx';
import StageSpend from '../../src/stage/StageSpend.tsx';
import StageVerdict from '../../src/stage/StageVerdict.tsx';

const nb = '\u00a0';
/** What stands under each figure on the wall, and the one number that may be changed there. */
const walls: Readonly<Record<string, { wall: () => VNode; answer: string; field: string }>> = {
  'three verdicts': {
    wall: () => <StageVerdict />,
    answer: `Can’t tell. 80.8${nb}% within.`,
    field: 'Measured level',
  },
  'what a better pad buys': {
    wall: () => <StageSpend />,
    answer: `Can’t tell: ±0.71${nb}dB`,
    field: 'The pad, limits',
  },
  'a borrowed line': {
    wall: () => <StageBorrowed />,
    answer: `4.49${nb}dBm ±0.36${nb}dB`,
    field: 'Limits of the lent meter',
  },
};

describe.each(Object.entries(walls))('%s on the wall', (_name, { wall, answer, field }) => {
  const markup = render(wall());

  it('has one figure in the frame of the stage, one answer and one number to change', () => {
    expect([...markup.matchAll(/data-frame="([^"]+)"/g)].map(([, frame]) => frame)).toEqual(['stage']);
    expect(markup).toContain(`<p class="stage-answer">${answer}</p>`);
    expect([...markup.matchAll(/<legend[^>]*>([^<]+)/g)].map(([, text]) => text)).toEqual([field]);
  });

  it('prints what was set and what came of it as a table of three rows', () => {
    const [, table = ''] = /<table class="stage-states">([\s\S]*?)<\/table>/.exec(markup) ?? [];
    expect([...table.matchAll(/<tr>/g)]).toHaveLength(3);
    expect(markup).not.toMatch(/NaN|Infinity|undefined| style=/);
  });
});
