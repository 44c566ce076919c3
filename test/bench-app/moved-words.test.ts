import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveLink } from '../../src/bench/state/edit-links.ts';
import { moveBetween, movedWords } from '../../src/bench/words/moved-words.ts';
import { typedEntries } from './typed-sheet.ts';

const of = (...labels: string[]) => typedEntries({ links: labels.map((label) => ({ label })) });
const idAt = (entries: ReturnType<typeof of>, at: number): string => entries.links[at]?.id ?? 'nobody';

describe('what is said of a link that is moved', () => {
  it('is its name and where it stands now', () => {
    const entries = of('Meter', 'Pad', 'Cable');
    expect(movedWords(entries.links, { id: idAt(entries, 1), to: 0 })).toBe('Pad: now 1 of 3.');
    expect(movedWords(entries.links, { id: idAt(entries, 0), to: 2 })).toBe('Meter: now 3 of 3.');
  });

  it('is in words, whatever the name has of symbols', () => {
    const entries = of('20 dB pad', 'Cable');
    expect(movedWords(entries.links, { id: idAt(entries, 0), to: 1 })).toBe('20 decibel pad: now 2 of 2.');
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

describe('which link went where', () => {
  const { links } = of('a', 'b', 'c', 'd');
  const entries = { ...of('a'), links };
  const reordered = (id: string, to: number) => moveLink(entries, { id, to }).links;
  const [first, second] = [links[0]?.id ?? '', links[1]?.id ?? ''];

  it('is found for each move, and for taking it back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 }), (from, to) => {
        const id = links[from]?.id ?? '';
        const after = reordered(id, to);
        expect(moveBetween(links, after, id)).toEqual(from === to ? undefined : { id, to });
        expect(moveBetween(after, links, id)).toEqual(from === to ? undefined : { id, to: from });
      }),
    );
  });

  it('is the one that is meant where two have changed places, else the upper one', () => {
    const after = reordered(first, 1);
    expect(moveBetween(links, after, second)).toEqual({ id: second, to: 0 });
    expect(moveBetween(links, after)).toEqual({ id: first, to: 1 });
  });

  it('is none where links came or went, changed, or all stand otherwise', () => {
    expect(moveBetween(links, links.slice(1))).toBeUndefined();
    expect(moveBetween(links, [...links, ...of('e').links])).toBeUndefined();
    expect(moveBetween(links, of('d', 'c', 'b', 'a').links)).toBeUndefined();
    expect(moveBetween(links, links.toReversed())).toBeUndefined();
    expect(moveBetween([], links)).toBeUndefined();
  });
});
