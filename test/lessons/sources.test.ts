import { describe, expect, it } from 'vitest';
import { wordIds, wordOf } from '../../src/lessons/words.ts';
import { filesBelow } from '../rules/sources.ts';

/** How a document is named in the list of sources at the foot of a lesson. */
const TITLES = {
  vim: 'JCGM 200:2012',
  conformity: 'JCGM 106:2012',
  radioRegulations: 'ITU Radio Regulations',
} as const;

/** Numbers of entries that the vocabulary gives from memory, with the document that they are of. */
const recalled = wordIds().flatMap((id) => {
  const { in: document, entry, checked } = wordOf(id).defined;
  return entry !== undefined && checked !== true && document in TITLES
    ? [{ title: TITLES[document as keyof typeof TITLES], entry }]
    : [];
});

/** Items of a list, each in one line. */
const itemsOf = (list: string): readonly string[] =>
  list
    .split(/^- /m)
    .slice(1)
    .map((item) => item.replaceAll(/\s+/g, ' '));

/** Items that name an entry from memory and do not say so. */
const silent = (list: string): readonly string[] =>
  itemsOf(list).filter(
    (item) =>
      !item.includes('memory') &&
      recalled.some(({ title, entry }) => item.includes(title) && item.split(/[^\d.]+/).includes(entry)),
  );

const lists = filesBelow('src/lessons', ['.mdx']).map(({ path, text }) => ({
  path,
  list: /<Sources>([\s\S]*)<\/Sources>/.exec(text)?.[1] ?? '',
}));

describe('sources of a lesson', () => {
  it('are found silent where a number from memory passes for one that was looked up', () => {
    expect(silent('\n- JCGM 200:2012, *words*\n  (VIM): 2.53 (correction).\n')).toHaveLength(1);
    expect(silent('\n- JCGM 200:2012: 2.53 by a number from memory.\n- JCGM 200:2012: 2.39\n')).toEqual([]);
    expect(silent('\n- ITU Radio Regulations, Article 1: 1.161 (EIRP).\n')).toHaveLength(1);
    expect(silent('\n- CEPT T/R 61-02: 2.53\n')).toEqual([]);
  });

  it.each(lists)('say of $path which numbers are from memory', ({ list }) => {
    expect(itemsOf(list).length).toBeGreaterThan(2);
    expect(silent(list)).toEqual([]);
  });
});
