import { describe, expect, it } from 'vitest';
import { levelDbm } from '#compute';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import type { Link, Sheet } from '../../src/sheet/sheet.ts';
import {
  type BandRowOptions,
  bandRows,
  bandText,
  DEFINITION_ID,
  SOCKET_ID,
} from '../../src/widgets/parts/band-rows.ts';

const rowsOf = (sheet: Sheet, options: Partial<BandRowOptions> = {}) =>
  bandRows({ chain: bandChainOf(sheet), showLimits: true, showCurve: false, handles: true, ...options });
const rowOf = (id: string, ...given: Parameters<typeof rowsOf>) => {
  const row = rowsOf(...given).find((candidate) => candidate.id === id);
  if (row === undefined) throw new Error(`wish a row, got none for ${id}`);
  return row;
};
const withLink = (id: string, change: Partial<Link>): Sheet => {
  const sheet = clubSheet();
  return { ...sheet, links: sheet.links.map((link) => (link.id === id ? { ...link, ...change } : link)) };
};
const limitsOnly = (): Sheet => {
  const sheet = clubSheet();
  return { ...sheet, links: sheet.links.filter(({ statement }) => statement.form === 'limits') };
};
const wrong = (sheet: Sheet): Sheet => withLinkAmount(sheet, 'pad', 1);

describe('rows of the reading band', () => {
  it('stand from the definition down to the socket, a rung for each link between', () => {
    expect(rowsOf(clubSheet()).map(({ id }) => id)).toEqual([
      DEFINITION_ID,
      ...clubSheet().links.map(({ id }) => id),
      SOCKET_ID,
    ]);
  });

  it('ask for the whole distribution only where its curve is drawn', () => {
    const chain = chainOf(clubSheet());
    let asked = 0;
    const watched = Object.defineProperty({ ...chain.result }, 'whole', {
      get: () => {
        asked += 1;
        return chain.result.whole;
      },
    });
    rowsOf(clubSheet(), { chain: { ...chain, result: watched } });
    expect(asked).toBe(0);
    rowsOf(clubSheet(), { chain: { ...chain, result: watched }, showCurve: true });
    expect(asked).toBe(1);
  });

  it('begin with the definition: exact, without a band or a handle', () => {
    expect(rowsOf(clubSheet())[0]).toEqual({
      id: DEFINITION_ID,
      label: 'The SI definition',
      detail: 'exact',
      number: '',
      dominant: false,
      handle: false,
    });
  });

  it('say of one rung alone, in words, that it adds most', () => {
    const rows = rowsOf(clubSheet());
    expect(rows.filter(({ dominant }) => dominant).map(({ id }) => id)).toEqual(['pad']);
    expect(rows.filter(({ detail }) => /most/.test(detail)).map(({ detail }) => detail)).toEqual([
      'adds ±0.5\u00a0dB, limits · most',
    ]);
    expect(rowOf('meter', clubSheet()).detail).toBe('adds ±0.25\u00a0dB, limits');
  });

  it('end in the socket with its level and the whole band', () => {
    const row = rowOf(SOCKET_ID, clubSheet());
    expect(row).toMatchObject({ detail: '27.10\u00a0dBm', number: '±0.69\u00a0dB', handle: false });
    expect(row.label).toBe('The transmitter’s socket');
    expect(rowOf(SOCKET_ID, clubSheet(), { socketLabel: 'The load' }).label).toBe('The load');
  });

  it('give the socket no more decimals of its level than its band has, and two at most', () => {
    const detail = (amount: number): string =>
      rowOf(
        SOCKET_ID,
        clubSheet().links.reduce((sheet, { id }) => withLinkAmount(sheet, id, amount), clubSheet()),
      ).detail;
    expect([detail(0), detail(0.001), detail(0.3), detail(3)]).toEqual([
      '27.10\u00a0dBm',
      '27.10\u00a0dBm',
      '27.10\u00a0dBm',
      '27.1\u00a0dBm',
    ]);
  });

  it('name the scatter of several readings, which no link stands for and no handle moves', () => {
    const sheet = { ...clubSheet(), readings: [levelDbm(6.9), levelDbm(7), levelDbm(7.1)] };
    // standard deviation 0.1 dB over the root of 3 readings (GUM 4.2.3)
    expect(rowOf('readings', sheet)).toMatchObject({
      label: 'Scatter of the readings',
      detail: 'adds u 0.058\u00a0dB',
      handle: false,
    });
  });
});

describe('a handle', () => {
  it('is there only where the figure can be dragged', () => {
    expect(rowsOf(clubSheet(), { handles: false }).some(({ handle }) => handle)).toBe(false);
    expect(rowsOf(clubSheet()).filter(({ handle }) => handle)).toHaveLength(clubSheet().links.length);
  });

  it('is missing on a rung that is stated in percent, which has no place on an axis of decibels', () => {
    const sheet = withLink('meter', { unit: 'percentOfPower' });
    expect(
      rowsOf(sheet)
        .filter(({ handle }) => !handle)
        .map(({ id }) => id),
    ).toEqual([DEFINITION_ID, 'meter', SOCKET_ID]);
  });
});

describe('a ghost', () => {
  const before = bandChainOf(clubSheet());

  it('stands on every rung that the change reaches, and on no other', () => {
    const ghosts = rowsOf(wrong(clubSheet()), { before }).filter(({ ghost }) => ghost);
    expect(ghosts.map(({ id }) => id)).toEqual(['pad', 'coax', SOCKET_ID]);
    expect(rowOf('pad', wrong(clubSheet()), { before }).ghost).toEqual(
      before.rungs.find(({ id }) => id === 'pad')?.cumulative.propagation.interval,
    );
  });

  it('is missing where nothing has changed, or too little to see', () => {
    expect(rowsOf(clubSheet(), { before }).some(({ ghost }) => ghost)).toBe(false);
    const hardly = withLinkAmount(clubSheet(), 'pad', 0.501);
    expect(rowsOf(hardly, { before }).some(({ ghost }) => ghost)).toBe(false);
    expect(rowsOf(clubSheet()).some(({ ghost }) => ghost)).toBe(false);
  });

  it('stands too where the band moves without growing', () => {
    const sheet = { ...clubSheet(), readings: [levelDbm(7.5)] };
    expect(rowOf(SOCKET_ID, sheet, { before }).ghost).toEqual(before.result.propagation.interval);
  });
});

describe('end marks', () => {
  it('are there when they are asked for', () => {
    expect(rowsOf(clubSheet(), { showLimits: false }).some(({ limits }) => limits)).toBe(false);
    expect(rowsOf(clubSheet()).filter(({ limits }) => limits)).toHaveLength(7);
  });

  it('are open from the first part without a limit down, and closed where every part has one', () => {
    expect(
      rowsOf(clubSheet())
        .slice(1)
        .every(({ limits }) => limits?.open),
    ).toBe(true);
    expect(rowsOf(limitsOnly()).some(({ limits }) => limits?.open)).toBe(false);
  });
});

describe('a curve', () => {
  it('is there where it is asked for and has been computed', () => {
    const evaluated = { chain: chainOf(clubSheet()), showCurve: true };
    expect(rowsOf(clubSheet(), evaluated).filter(({ curve }) => curve)).toHaveLength(7);
    expect(rowsOf(clubSheet(), { ...evaluated, showCurve: false }).some(({ curve }) => curve)).toBe(false);
    expect(rowsOf(clubSheet(), { showCurve: true }).some(({ curve }) => curve)).toBe(false);
  });
});

describe('how wide a band is, as text', () => {
  it('has two significant digits, and is exact where nothing was added (GUM 7.2.6)', () => {
    const text = (expanded: number) =>
      bandText({ propagation: { ...bandChainOf(clubSheet()).result.propagation, expanded } });
    expect([0, 0.02, 0.688, 2.47].map(text)).toEqual([
      'exact',
      '±0.020\u00a0dB',
      '±0.69\u00a0dB',
      '±2.5\u00a0dB',
    ]);
  });
});
