import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import StageBudget from '../../src/stage/StageBudget.tsx';
import StageJoined from '../../src/stage/StageJoined.tsx';
import StageShared from '../../src/stage/StageShared.tsx';

const walls: Readonly<Record<string, () => VNode>> = {
  'shared cause': () => <StageShared />,
  'meter that joins': () => <StageJoined />,
  budget: () => <StageBudget />,
};
const markup = (name: string): string => {
  const make = walls[name];
  if (make === undefined) throw new Error(`wish a wall, got ${name}`);
  return render(make());
};
const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, group]) => group ?? '');

describe.each(Object.keys(walls))('%s on the wall, as the server writes it', (name) => {
  it('has one number to be changed in one press, and one answer in large type', () => {
    const text = markup(name);
    expect(all(text, /<fieldset[^>]*class="([^"]*)"/g)).toHaveLength(1);
    expect(all(text, /<input([^>]*)>/g)).toHaveLength(1);
    expect(all(text, /class="stage-answer">([^<]*)</g)).toHaveLength(1);
  });

  it('shows three numbers at most beside its figure and what is changed', () => {
    const answers = all(markup(name), /class="stage-answer">([^<]*)</g);
    expect(answers[0]).toMatch(/[±\u2212]\d/);
  });

  it('shows no broken number, asks for no style, and is quiet until something changes', () => {
    expect(markup(name)).not.toMatch(/\sstyle=|NaN|Infinity|undefined|\[object/);
    expect(markup(name)).toMatch(/aria-live="polite"><\/p>/);
  });
});

describe('the budget on the wall', () => {
  it('has its four largest parts, the largest first', () => {
    const [table = ''] = /<table class="parts-table">[\s\S]*?<\/table>/.exec(markup('budget')) ?? [];
    const contributions = all(table, /class="number">([\d.]+)/g).map(Number);
    expect(contributions).toHaveLength(4);
    expect(contributions).toEqual(contributions.toSorted((a, b) => b - a));
    expect(all(table, /<th scope="row">([^<]*)</g)[0]).toBe('20 dB pad');
  });
});
