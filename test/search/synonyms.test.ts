import { describe, expect, it } from 'vitest';
import { otherNames, withSynonyms } from '../../src/search/synonyms.ts';

describe('other names', () => {
  it('are given for what a text speaks of, in whatever form it does', () => {
    const others = otherNames();
    expect(others('Two pads')).toContain('attenuator');
    expect(others('two attenuators')).toContain('pad');
    expect(others('on a scope').split('; ')).toEqual(expect.arrayContaining(['oscilloscope', 'CRO']));
    expect(others('the standing-wave ratio').split('; ')).toEqual(expect.arrayContaining(['SWR', 'VSWR']));
  });

  it('are not given for a part of a name or of a word', () => {
    const others = otherNames();
    expect(others('a dummy in a padded cell')).toBe('');
    expect(others('')).toBe('');
    expect(others('the a of')).toBe('');
  });

  it('leave out what the text says already', () => {
    const names = otherNames()('SWR').split('; ');
    expect(names).toContain('VSWR');
    expect(names).not.toContain('SWR');
  });

  it('may be added to', () => {
    expect(otherNames([['hidden transmitter', 'fox']])('Find the fox')).toBe('hidden transmitter');
  });
});

describe('the terms to point at', () => {
  it('are those found and their other names in a word', () => {
    expect([...withSynonyms(['pad'])]).toEqual(['pad', 'attenu']);
    expect([...withSynonyms(['frequency'])]).toEqual(['frequency']);
    expect(withSynonyms([]).size).toBe(0);
  });
});
