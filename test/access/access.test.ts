import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { conditions } from '../../src/access/conditions.ts';
import { everywhere } from '../../src/access/everywhere.ts';
import { pageKinds } from '../../src/access/kinds.ts';
import { looks } from '../../src/access/looks.ts';

const browser = fileURLToPath(new URL('../browser/', import.meta.url));
/** Gates that try something else than what a reader meets: addresses under a path, each kind of page by itself; and the visit of many parts. */
const OTHER_GATES = ['base', 'matrix', 'page'];
/** Parts of the visit that a reader does not meet either: how islands wake, and what all parts share. */
const OTHER_PARTS = ['waking', 'visit'];

describe('the lists that the statement on access is made from', () => {
  it('name every test that runs on every page, and no other', () => {
    const gates = readdirSync(browser)
      .filter((file) => file.endsWith('.gate.ts'))
      .map((file) => file.replace('.gate.ts', ''));
    const parts = readdirSync(`${browser}visit`).map((file) => file.replace('.ts', ''));
    const named = [...everywhere.map(({ gate }) => gate), ...OTHER_GATES, ...OTHER_PARTS];
    expect(named.toSorted()).toEqual([...gates, ...parts].toSorted());
  });

  it('use every look under some condition, each condition once', () => {
    const used = new Set(conditions.flatMap((condition) => condition.looks));
    expect([...used].toSorted()).toEqual(Object.keys(looks).toSorted());
    expect(new Set(conditions.map(({ id }) => id)).size).toBe(conditions.length);
    expect(new Set(conditions.map(({ words }) => words)).size).toBe(conditions.length);
    for (const { looks: own } of conditions) expect(new Set(own).size).toBe(own.length);
  });

  it('name all that the guidelines ask a page to stand', () => {
    const has = (fits: (condition: (typeof conditions)[number]) => boolean): boolean => conditions.some(fits);
    // 1.4.10: 1280 by 1024 at 400 %, which is 320 by 256
    expect(has(({ width, height, zoom = 1 }) => width * zoom === 1280 && height * zoom === 1024)).toBe(true);
    // 1.4.12, with the four distances that it names
    const spaced = conditions.filter(({ ownStyle }) => ownStyle !== undefined);
    expect(spaced.map(({ width }) => width).toSorted()).toEqual([1024, 320].toSorted());
    for (const { ownStyle } of spaced)
      for (const rule of [
        'line-height:1.5!',
        'letter-spacing:.12em!',
        'word-spacing:.16em!',
        'margin-bottom:2em!',
      ])
        expect(ownStyle).toContain(rule);
    // 1.4.4
    expect(has(({ letters = 1 }) => letters >= 2)).toBe(true);
    for (const scheme of ['light', 'dark'] as const)
      for (const forced of [true, false])
        expect(has((each) => each.scheme === scheme && (each.forcedColours ?? false) === forced)).toBe(true);
    expect(has(({ media }) => media === 'print')).toBe(true);
  });

  it('say everything in words that can stand in a sentence or a list', () => {
    for (const { words } of [...everywhere, ...Object.values(looks)])
      expect(words).toMatch(/^[A-Z].{20,}\.$/s);
    for (const { words } of conditions) expect(words).toMatch(/^[A-Z0-9].*[^.]$/);
    for (const { name } of [...pageKinds, ...Object.values(looks)]) expect(name).toMatch(/^[A-Z][^.;]*$/);
    expect(new Set(pageKinds.map(({ name }) => name)).size).toBe(pageKinds.length);
  });
});
