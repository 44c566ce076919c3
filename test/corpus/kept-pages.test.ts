import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import type { AddressSpec } from '../../src/address/field-spec.ts';
import { boardSheet } from '../../src/examples/four-readings-one-limit.ts';
import { exampleAt } from '../../src/examples/index.ts';
import { starts } from '../../src/examples/starts.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { startingAt } from '../../src/widgets/parts/starting.ts';
import { bandSpec } from '../../src/widgets/reading-band/spec.ts';
import { type Kind, kinds } from './kinds.ts';

const here = new URL('./', import.meta.url);
const kept = readdirSync(here)
  .filter((file) => file.endsWith('.txt'))
  .flatMap((file) => readFileSync(new URL(file, here), 'utf8').split('\n'))
  .filter((line) => line !== '');

/** What each page's address speaks of. */
const pages: ReadonlyMap<string, Kind> = new Map([
  ['/', 'club'],
  ['/learn/traceability/the-chain-to-the-definition/', 'club'],
  ['/learn/traceability/measuring-is-comparing/', 'rules'],
  ['/learn/traceability/calibration-changes-nothing/', 'meter'],
  ['/learn/traceability/blocks-and-warm-hands/', 'blocks'],
  ['/learn/stacking/what-a-tolerance-says/', 'stated'],
  ['/learn/stacking/shared-causes/', 'shared'],
  ['/learn/stacking/worst-case/', 'row'],
  ['/learn/stacking/writing-it-down/', 'budget'],
  ['/learn/stacking/at-right-angles/', 'angles'],
  ['/learn/measuring/the-meter-joins-the-circuit/', 'joined'],
  ['/examples/two-pads-into-a-receiver/', 'two-pads'],
  ['/bench/', 'bench'],
]);
const band = (sheet: Sheet): AddressSpec => bandSpec(sheet, { showLimits: true, showCurve: false });
/** What the figure of a worked example that is no chain speaks of. */
const figures: Readonly<Record<string, () => AddressSpec>> = {
  'swr-of-a-whip': () => startingAt(kinds.back, starts['swr-of-a-whip']()),
  'keyed-and-spoken': () => startingAt(kinds.keyed, starts['keyed-and-spoken']()),
  'thirty-decibels-forgotten': () => startingAt(kinds.line, starts['thirty-decibels-forgotten']()),
  'four-readings-one-limit': () => band(boardSheet()),
};

/** What an address of a worked example speaks of; nothing for another page's. */
function exampleSpec(path: string): AddressSpec | undefined {
  const [, slug] = /^\/examples\/([a-z-]+)\/$/.exec(path) ?? [];
  if (slug === undefined) return undefined;
  const example = exampleAt(slug);
  return example.kind === 'chain' ? band(example.sheet()) : figures[slug]?.();
}

const pathOf = (address: string): string => new URL(address, 'http://site.invalid').pathname;
const specOf = (address: string): AddressSpec | undefined => {
  const kind = pages.get(pathOf(address));
  return kind === undefined ? exampleSpec(pathOf(address)) : kinds[kind];
};

describe('addresses of pages once given out', () => {
  test.each(kept)('open without a problem: %s', (address) => {
    const spec = specOf(address);
    if (spec === undefined) throw new Error(`wish a page that keeps a state, got ${address}`);
    const { search, hash, pathname } = new URL(address, 'http://site.invalid');
    const { problems, carried } = decode(spec, pathname === '/bench/' ? hash : search);
    expect(problems).toEqual([]);
    expect(carried).toBe(true);
  });

  test('are there for every page that keeps a kind of state of its own', () => {
    const there = new Set(kept.map(pathOf));
    const missing = [...new Set(pages.values())].filter(
      (kind) => ![...pages].some(([path, own]) => own === kind && there.has(path)),
    );
    expect(missing).toEqual([]);
    expect(kept.filter((address) => pathOf(address).startsWith('/examples/')).length).toBeGreaterThan(4);
  });
});
