import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { specFaults } from '../../src/address/spec-faults.ts';
import { cleanLines } from '../../src/address/text-code.ts';
import {
  decodeEntries,
  encodeEntries,
  encodePlainly,
  sheetFragment,
} from '../../src/bench/address/address.ts';
import { sheetAddressSpec } from '../../src/bench/address/address-spec.ts';
import { fragmentOf, openingOf } from '../../src/bench/address/fragment.ts';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { blankLink, type SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { cleanText } from '../../src/text/clean.ts';
import { anyEntries, usableEntries } from './any-entries.ts';

const club = demonstrationEntries();
const [clubPoint] = club.points;
if (clubPoint === undefined) throw new Error('demonstration: wish a point');
const withPoint = (change: Partial<typeof clubPoint>): SheetEntries => ({
  ...club,
  points: [{ ...clubPoint, ...change }],
});

/** Ids are given anew by place: they are no part of what was typed. */
const renumbered = (entries: SheetEntries): SheetEntries => ({
  ...entries,
  links: entries.links.map((link, index) => ({ ...link, id: `link${index + 1}` })),
  points: entries.points.map((point, index) => ({ ...point, id: `point${index + 1}` })),
});

it('keeps to the rules of addresses', () => {
  expect(specFaults(sheetAddressSpec())).toEqual([]);
});

describe('a sheet in an address', () => {
  it.each([
    ['packed', encodeEntries],
    ['in plain pairs', encodePlainly],
  ])('comes back as it was typed, %s', (_how, encoded) => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const address = encoded(entries);
        if (address === undefined) throw new Error('usable entries: wish an address');
        expect(decodeEntries(`#${address}`)).toEqual({
          entries: renumbered(entries),
          problems: [],
          carried: true,
        });
      }),
    );
  });

  it('consists of letters and digits between three marks, so that no board cuts it or makes anything of it', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        expect(encodeEntries(entries)).toMatch(/^zip=[0-9A-Za-z]+&v=3$/);
      }),
    );
  });

  it('is shorter packed than in plain pairs', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        expect(encodeEntries(entries)?.length).toBeLessThan(encodePlainly(entries)?.length ?? 0);
      }),
    );
  });

  it('brings back also what cannot be used, once it is clean text', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { entries: back, problems } = decodeEntries(encodeEntries(entries) ?? '');
        expect(problems).toEqual([]);
        expect(back.points.map(({ nominal }) => nominal)).toEqual(
          entries.points.map(({ nominal }) => cleanText(nominal)),
        );
        expect(back.links.map(({ amount, off }) => [amount, off])).toEqual(
          entries.links.map(({ amount, off }) => [cleanText(amount), off]),
        );
        expect(back.method).toBe(entries.method);
        expect(back.checks.off).toBe(cleanLines(entries.checks.off));
      }),
    );
  });

  it('keeps the lines of a pasted column, and the tabs between columns side by side', () => {
    const readings = '7.0 dBm\n7,1\n\n6.9';
    expect(decodeEntries(encodeEntries(withPoint({ readings })) ?? '').entries.points[0]?.readings).toBe(
      readings,
    );
    const pasted = { readings: '9.5\t9.4\t5\t0.1\n9.6\t9.5\t5\t0.1', riseDc: '' };
    const back = decodeEntries(encodeEntries(withPoint(pasted)) ?? '').entries.points[0];
    expect(back).toMatchObject(pasted);
  });

  it('carries what was agreed and changed, and of which point', () => {
    const entries: SheetEntries = {
      ...club,
      points: [clubPoint, { ...clubPoint, id: 'point7' }],
      log: {
        lockedAt: '2026-05-09T10:00:00.000Z',
        read: ['point7', 'point3'],
        changes: [
          { at: '2026-05-09T10:05:00Z', what: 'rule', from: 'a', to: 'b', reason: 'slip of the pen' },
          { at: '2026-05-09T10:06:00Z', what: 'point7', from: '27 dBm ± 1', to: '27 dBm ± 2', reason: '' },
          { at: '2026-05-09T10:07:00Z', what: 'point3', from: 'c', to: 'd', reason: '' },
        ],
      },
    };
    const { log } = decodeEntries(encodeEntries(entries) ?? '').entries;
    expect(log).toEqual({
      lockedAt: '2026-05-09T10:00:00.000Z',
      read: ['point2'],
      changes: [
        entries.log.changes[0],
        { ...entries.log.changes[1], what: 'point2' },
        { ...entries.log.changes[2], what: 'gone' },
      ],
    });
  });

  it('is not made of a sheet that is too long for one, nor with some of its readings only', () => {
    const link = { ...blankLink('x'), label: 'ß'.repeat(60), amount: '0.123456', cause: 'ß'.repeat(60) };
    expect(encodePlainly({ ...club, links: Array.from({ length: 200 }, () => link) })).toBeUndefined();
    const column = (count: number) => Array.from({ length: count }, () => '7.12').join('\n');
    expect(encodeEntries(withPoint({ readings: column(1000) }))).toBeDefined();
    expect(encodeEntries(withPoint({ readings: column(10_000) }))).toBeUndefined();
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
    const fragment = fragmentOf(withPoint({ nominal: '28' })) ?? '';
    expect(decodeEntries(fragment).entries.points[0]?.nominal).toBe('28');
  });

  it('is made the same way for an example as by the bench', () => {
    expect(sheetFragment(twoPadsSheet())).toBe(encodePlainly(entriesOf(twoPadsSheet())));
    const measurement = clubMeasurement('inLine');
    expect(sheetFragment(measurement)).toBe(encodePlainly(entriesOf(measurement)));
  });

  it.each(METHODS)('by %s fits into a link that a forum takes', (method) => {
    expect(sheetFragment(clubMeasurement(method)).length).toBeLessThan(1000);
    expect(encodePlainly(freshEntries(method))?.length).toBeLessThan(400);
    // path links are to be 70 letters or fewer; what nobody has typed anything into keeps to that
    expect(encodeEntries(freshEntries(method))?.length).toBeLessThan(50);
  });

  it('of ten points with five readings each and twelve links still fits into an ordinary address', () => {
    const links = Array.from({ length: 12 }, (_, index) => ({
      ...blankLink(`l${index}`),
      label: 'Pad',
      amount: '0.5',
    }));
    const points = Array.from({ length: 10 }, (_, index) => ({
      ...clubPoint,
      id: `point${index + 1}`,
      frequency: `${index} MHz`,
      readings: '7.0\n7.1\n7.0\n7.2\n7.1',
    }));
    expect(encodePlainly({ ...club, links, points })?.length).toBeLessThan(2500);
    expect(encodeEntries({ ...club, links, points })?.length).toBeLessThan(400);
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
    expect(openingOf(hash)).toMatchObject({
      type: 'open',
      problems: [],
      entries: { points: [{ nominal: '27 dBm' }] },
    });
  });

  it('opens with what is left of it, and says so, where it was cut short', () => {
    const opening = openingOf(`#${own.slice(0, own.length / 2)}`);
    expect(opening).toMatchObject({ type: 'open', entries: { points: [{ readings: '-13.4 dBm' }] } });
    expect(opening?.type === 'open' && opening.problems.length).toBeGreaterThan(0);
  });

  it('opens without keys that mean nothing here, and names them', () => {
    const opening = openingOf(`#${own.replace('v=3', 'xyz=7&v=3')}`);
    expect(opening).toMatchObject({ type: 'open', problems: [expect.stringContaining('xyz')] });
  });

  it('keeps the sheet that is there where the address comes from a later version', () => {
    expect(openingOf(`#${own.replace('v=3', 'v=9')}`)).toMatchObject({
      type: 'refuse',
      problems: [expect.stringContaining('later version')],
    });
  });

  it('keeps the sheet that is there where the address is too long to be one', () => {
    expect(openingOf(`#${own}${'&x=1'.repeat(30_000)}`)?.type).toBe('refuse');
  });
});

describe('an address of the first version, which had one point', () => {
  it('tells a key that all objects share, as any other that means nothing', () => {
    const { problems } = decodeEntries('__proto__=5&constructor=6&m=7&v=1');
    expect(problems.filter((told) => told.includes('means nothing here'))).toHaveLength(2);
  });

  const first = 't=Old&n=27-dBm&a=1.5&s=pm&m=7_a-7.1&l=1&l1n=Pad&l1l=20&l1a=0.5';

  it('opens with its specification and readings at that point', () => {
    expect(openingOf(`#${first}&v=1`)).toMatchObject({
      type: 'open',
      problems: [],
      entries: {
        title: 'Old',
        method: 'padsIntoMeter',
        points: [{ id: 'point1', nominal: '27 dBm', tolerance: '1.5', readings: '7\n7.1' }],
        links: [{ label: 'Pad', loss: '20', amount: '0.5' }],
      },
    });
  });

  it('opens with what is left of it where it lost its end, and says so', () => {
    const opening = openingOf(`#${first}`);
    expect(opening).toMatchObject({
      type: 'open',
      problems: [expect.stringContaining('lost its end')],
      entries: { points: [{ nominal: '27 dBm', readings: '7\n7.1' }] },
    });
  });
});

describe('a packed address', () => {
  const packed = encodeEntries(withPoint({ nominal: '28 dBm' })) ?? '';

  it.each([
    ['&amp; for &', packed.replaceAll('&', '&amp;')],
    ['an escaped #', `%23${packed}`],
    ['quoted-printable marks', packed.replaceAll('=', '=3D')],
    ['a line break in the middle', `${packed.slice(0, 30)}\n> ${packed.slice(30)}`],
    ['a full stop at the end', `${packed}.`],
  ])('opens in full with %s, packed', (_damage, hash) => {
    expect(openingOf(hash)).toMatchObject({
      type: 'open',
      problems: [],
      entries: { points: [{ nominal: '28 dBm' }] },
    });
  });

  it('is refused where a letter of a packed one was changed, and the sheet that is there stays', () => {
    const other = packed[20] === 'A' ? 'B' : 'A';
    expect(openingOf(`#${packed.slice(0, 20)}${other}${packed.slice(21)}`)).toEqual({
      type: 'refuse',
      problems: [expect.stringContaining('changed on its way')],
    });
  });

  it('opens with the beginning of a packed one that was cut short, and says so', () => {
    const long =
      encodeEntries({ ...club, remarks: 'Nothing unusual at all, but that it took an hour' }) ?? '';
    const opening = openingOf(`#${long.slice(0, -12)}`);
    expect(opening).toMatchObject({ type: 'open', problems: [expect.stringContaining('lost its end')] });
    expect(opening?.type === 'open' && opening.entries.title).toBe(club.title);
  });

  it('is told from one of a later version without being unfolded', () => {
    expect(openingOf(`#${packed.replace('v=3', 'v=4')}`)).toMatchObject({
      type: 'refuse',
      problems: [expect.stringContaining('later version of this site (4)')],
    });
  });

  it('carries no second packed one, and no version, inside', () => {
    expect(openingOf(`#${packed}&x1n=30&extra=1`)).toMatchObject({
      type: 'open',
      problems: [expect.stringContaining('extra')],
    });
  });
});
