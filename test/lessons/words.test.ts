import { describe, expect, it } from 'vitest';
import { definedText, wordGroups, wordIds, wordOf, wordsIn } from '../../src/lessons/words.ts';
import { filesBelow } from '../rules/sources.ts';

/** Numbers of entries that were checked against the document; every other number on the page is said to be from memory. */
const checked =
  '2.13 2.14 2.15 2.16 2.17 2.18 2.19 2.26 2.35 2.37 2.39 2.40 2.41 2.42 2.44 2.46 3.11 4.14 4.15 4.20 4.21 4.25 4.26 5.1 5.4 5.5'.split(
    ' ',
  );
const words = wordIds().map((id) => ({ id, ...wordOf(id) }));

describe('the vocabulary', () => {
  it('has every word once, in its groups and by its id', () => {
    const grouped = wordGroups.flatMap((group) => Object.keys(group.words));
    expect(grouped.toSorted()).toEqual(wordIds().toSorted());
    expect(new Set(grouped).size).toBe(grouped.length);
    expect(new Set(words.map(({ term }) => term)).size).toBe(words.length);
  });

  it.each(words)('says what $term means in a sentence or two, and no more', ({ id, means, mind = '' }) => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(means).toMatch(/^[A-Z].*\.$/s);
    expect(means.length).toBeLessThan(220);
    expect(mind).toMatch(/^$|^.*\.$/s);
  });

  it('writes the edition beside every number of the VIM, and calls numbers from memory that', () => {
    for (const { id, defined } of words) {
      if (defined.in !== 'vim') continue;
      expect(definedText(defined), id).toMatch(/^VIM \(2012\) \d\.\d+/);
      expect(definedText(defined).endsWith('(number from memory)'), id).toBe(
        !checked.includes(defined.entry ?? ''),
      );
    }
  });

  it('has no two words with one entry', () => {
    const entries = words.flatMap(({ defined }) => (defined.entry ? [`${defined.in} ${defined.entry}`] : []));
    expect(new Set(entries).size).toBe(entries.length);
  });

  it('names the other documents in full', () => {
    expect(definedText({ in: 'conformity', entry: '3.3.5' })).toBe(
      'JCGM 106 (2012) 3.3.5 (number from memory)',
    );
    expect(definedText({ in: 'radioRegulations', entry: '1.157', checked: true })).toBe(
      'ITU Radio Regulations, Article 1, 1.157',
    );
    expect(definedText({ in: 'decibelUse' })).toBe('ITU-R V.574');
    expect(definedText({ in: 'trade' })).toBe('a word of the trade');
  });

  it('refuses an id that no word has', () => {
    for (const id of ['watt', '', '__proto__'])
      expect(() => wordOf(id)).toThrow(`wordOf: no word has the id, got ${JSON.stringify(id)}`);
  });

  it('is asked by lessons and pages only for words that it has', () => {
    const asked = filesBelow('src', ['.mdx', '.astro']).flatMap(({ text }) => wordsIn(text));
    expect(asked.filter((id) => !wordIds().includes(id))).toEqual([]);
    expect(asked.length, 'the pattern finds them').toBeGreaterThan(0);
  });

  it('is read from a lesson in the order of first use, each word once', () => {
    expect(
      wordsIn('<Word of="error">a</Word> <Word\n  of="bias">b</Word> <Word of="error">c</Word>'),
    ).toEqual(['error', 'bias']);
  });
});
