import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { specFaults } from '../../src/address/spec-faults.ts';
import { decodeEntries, encodeEntries, sheetFragment } from '../../src/bench/address.ts';
import { sheetAddressSpec } from '../../src/bench/address-spec.ts';
import { entriesOf } from '../../src/bench/entries-of.ts';
import { fragmentOf, openingOf } from '../../src/bench/use-address.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { blankLink, type SheetEntries } from '../../src/sheet/entries.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { cleanText } from '../../src/text/clean.ts';
import { anyEntries, usableEntries } from './any-entries.ts';

const club = entriesOf(clubSheet());

/** Ids are given anew by place: they are no part of what was typed. */
const renumbered = (entries: SheetEntries): SheetEntries => ({
  ...entries,
  links: entries.links.map((link, index) => ({ ...link, id: `link${index + 1}` })),
});

it('keeps to the rules of addresses', () => {
  expect(specFaults(sheetAddressSpec())).toEqual([]);
});

describe('a sheet in an address', () => {
  it('comes back as it was typed', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const address = encodeEntries(entries);
        if (address === undefined) throw new Error('usable entries: wish an address');
        expect(decodeEntries(`#${address}`)).toEqual({
          entries: renumbered(entries),
          problems: [],
          carried: true,
        });
      }),
    );
  });

  it('brings back also what cannot be used, once it is clean text', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { entries: back, problems } = decodeEntries(encodeEntries(entries) ?? '');
        expect(problems).toEqual([]);
        expect(back.nominal).toBe(cleanText(entries.nominal));
        expect(back.links.map(({ amount }) => amount)).toEqual(
          entries.links.map(({ amount }) => cleanText(amount)),
        );
      }),
    );
  });

  it('keeps the lines of a pasted column', () => {
    const readings = '7.0 dBm\n7,1\n\n6.9';
    expect(decodeEntries(encodeEntries({ ...club, readings }) ?? '').entries.readings).toBe(readings);
  });

  it('is not made of a sheet that is too long for one', () => {
    const link = { ...blankLink('x'), label: 'ß'.repeat(60), amount: '0.123456', cause: 'ß'.repeat(60) };
    expect(encodeEntries({ ...club, links: Array.from({ length: 200 }, () => link) })).toBeUndefined();
  });

  it('holds a hundred ordinary links', () => {
    const links = Array.from({ length: 100 }, (_, index) => ({
      ...blankLink(`l${index}`),
      label: `Pad ${index}`,
      loss: '0.5',
      amount: '0.25',
    }));
    expect(encodeEntries({ ...club, links })).toBeDefined();
  });

  it('is left out for the demonstration, so that its address stays bare', () => {
    expect(fragmentOf(club)).toBe('');
    expect(fragmentOf({ ...club, nominal: '28' })).toContain('n=28');
  });

  it('is made the same way for an example as by the bench', () => {
    expect(sheetFragment(twoPadsSheet())).toBe(encodeEntries(entriesOf(twoPadsSheet())));
  });
});

describe('an address that is none of this bench’s', () => {
  it('is never a reason to throw', () => {
    const codeUnits = fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 200 });
    fc.assert(fc.property(codeUnits, (units) => void openingOf(String.fromCharCode(...units))));
  });

  it.each(['', '#', '#main', '#ways'])('%j says nothing, being a place on the page', (hash) => {
    expect(openingOf(hash)).toBeUndefined();
  });

  const own = sheetFragment(twoPadsSheet());

  it.each([
    ['&amp; for &', own.replaceAll('&', '&amp;')],
    ['an escaped #', `%23${own}`],
    ['percent signs', encodeURIComponent(own)],
    ['a full stop at the end', `${own}.`],
  ])('opens in full with %s', (_damage, hash) => {
    expect(openingOf(hash)).toMatchObject({ type: 'open', problems: [], entries: { nominal: '27 dBm' } });
  });

  it('opens with what is left of it, and says so, where it was cut short', () => {
    const opening = openingOf(`#${own.slice(0, own.length / 2)}`);
    expect(opening).toMatchObject({ type: 'open', entries: { readings: '-13.4 dBm' } });
    expect(opening?.type === 'open' && opening.problems.length).toBeGreaterThan(0);
  });

  it('opens without keys that mean nothing here, and names them', () => {
    const opening = openingOf(`#${own.replace('v=1', 'xyz=7&v=1')}`);
    expect(opening).toMatchObject({ type: 'open', problems: [expect.stringContaining('xyz')] });
  });

  it('keeps the sheet that is there where the address comes from a later version', () => {
    expect(openingOf(`#${own.replace('v=1', 'v=9')}`)).toMatchObject({
      type: 'refuse',
      problems: [expect.stringContaining('later version')],
    });
  });

  it('keeps the sheet that is there where the address is too long to be one', () => {
    expect(openingOf(`#${own}${'&x=1'.repeat(30_000)}`)?.type).toBe('refuse');
  });
});
