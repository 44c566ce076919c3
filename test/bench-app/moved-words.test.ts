import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveLink } from '../../src/bench/state/edit-links.ts';
import { movedWords } from '../../src/bench/words/moved-words.ts';
import { typedEntries } from './typed-sheet.ts';

const of = (...labels: string[]) => typedEntries({ links: labels.map((label) => ({ label })) });
const idAt = (entries: ReturnType<typeof of>, at: number): string => entries.links[at]?.id ?? 'nobody';

describe('what is said of a link that is moved', () => {
  it('is its name and where it stands now', () => {
    const entries = of('Meter', 'Pad', 'Cable');
    expect(movedWords(entries.links, { id: idAt(entries, 1), to: 0 })).toBe('Pad: now 1 of 3.');
    expect(movedWords(entries.links, { id: idAt(entries, 0), to: 2 })).toBe('Meter: now 3 of 3.');
  });

  it('calls one without a name by where it stood', () => {
    const entries = of('Meter', ' ');
    expect(movedWords(entries.links, { id: idAt(entries, 1), to: 0 })).toBe('Link 2: now 1 of 2.');
  });

  it('is where it stands, whatever moved where, and nothing where there was no way to go', () => {
    const entries = of('a', 'b', 'c', 'd');
    fc.assert(
      fc.property(fc.integer({ min: -1, max: 4 }), fc.integer({ min: -2, max: 6 }), (from, to) => {
        const id = idAt(entries, from);
        const told = movedWords(entries.links, { id, to });
        const { links } = moveLink(entries, { id, to });
        const stands = links.findIndex((link) => link.id === id);
        const isPlace = id !== 'nobody' && to >= 0 && to < links.length;
        expect(told).toBe(isPlace ? `${links[stands]?.label}: now ${stands + 1} of 4.` : '');
      }),
    );
  });
});
