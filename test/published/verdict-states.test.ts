import { describe, expect, it } from 'vitest';
import { chapters } from '../../src/checks/index.ts';
import { outcomeOf } from '../../src/checks/outcome.ts';
import { checksOf } from '../../src/checks/summary.ts';
import { answersOf, riskNote, riskRows } from '../../src/widgets/verdict/words.ts';
import { verdictFigures, verdictState } from './verdict-figures.ts';

const PATH = '/learn/measuring/inside-outside-cant-tell/';
const found = checksOf(chapters()).flatMap((check) =>
  check.tried?.path === PATH ? [{ ...check, tried: check.tried }] : [],
);

function addressOf(id: string): string {
  const { tried } = found.find((check) => check.id === id) ?? {};
  if (tried === undefined) throw new Error(`wish an address, got none for ${id}`);
  return tried.state;
}

describe('examples of JCGM 106 as states of the lesson’s figure', () => {
  it('are five', () =>
    expect(found.map(({ id }) => id).toSorted()).toEqual([
      'jcgm106-capability',
      'jcgm106-container',
      'jcgm106-guard-u',
      'jcgm106-resistors',
      'jcgm106-zener',
    ]));

  it.each(found)('$id: the figure has the very numbers of the check', ({ figures, tried }) => {
    const own = verdictFigures(tried.state);
    for (const figure of figures)
      expect(own[figure.what], figure.what).toBeCloseTo(outcomeOf(figure).computed, 7);
  });

  it('say the printed numbers in words', () => {
    const words = (id: string): string =>
      answersOf(verdictState(addressOf(id)))
        .flatMap(Object.values)
        .join(' ');
    expect(words('jcgm106-zener')).toContain('1.40 u away');
    expect(words('jcgm106-zener')).toMatch(/91\.9.% within/);
    expect(words('jcgm106-container')).toContain('2.29 u away');
    expect(words('jcgm106-container')).toMatch(/98\.9.% within/);
    expect(words('jcgm106-capability')).toContain('26.85 to 27.15');
    expect(words('jcgm106-guard-u')).toMatch(/2\.3.%/);
  });

  it('count the resistors, a thousand instead of the hundred in print', () => {
    const state = verdictState(addressOf('jcgm106-resistors'));
    const row = riskRows(state).find(({ kind }) => kind === state.rule);
    expect(row?.cells).toEqual(['845.3', '9.9', '69.0']);
    expect(riskNote(state)).toMatch(/^Of the thousand, 904 keep to their limits.*45.% of those/);
  });
});
