import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
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
const kindOf = (address: string): Kind | undefined =>
  pages.get(new URL(address, 'http://site.invalid').pathname);

describe('addresses of pages once given out', () => {
  test.each(kept)('open without a problem: %s', (address) => {
    const kind = kindOf(address);
    if (kind === undefined) throw new Error(`wish a page that keeps a state, got ${address}`);
    const { search, hash } = new URL(address, 'http://site.invalid');
    const { problems, carried } = decode(kinds[kind], kind === 'bench' ? hash : search);
    expect(problems).toEqual([]);
    expect(carried).toBe(true);
  });

  test('are there for every kind that a page keeps', () => {
    expect([...new Set(kept.map(kindOf))].sort()).toEqual([...new Set(pages.values())].sort());
  });
});
