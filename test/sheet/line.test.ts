import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LINE_PARTS,
  type Line,
  levelAtEnd,
  lineGain,
  lineSteps,
  partsOfLine,
  radiatedLevels,
} from '../../src/sheet/line.ts';
import { ABOVE_NOMINAL_DB, lineCautions } from '../../src/sheet/line-cautions.ts';
import { LINE_SLIPS, lineSlip, slipEnd } from '../../src/sheet/line-slips.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const line: fc.Arbitrary<Line> = fc.record({
  levelDbm: number(0, 50),
  amplifierDb: number(0, 30),
  firstDb: number(0, 40),
  coaxDb: number(0, 6),
  secondDb: number(0, 40),
  end: fc.constantFrom('instrument' as const, 'antenna' as const),
  antennaDb: number(-20, 20),
  over: fc.constantFrom('isotropic' as const, 'halfWaveDipole' as const),
});
const club: Line = {
  levelDbm: 27,
  amplifierDb: 0,
  firstDb: 20,
  coaxDb: 0.1,
  secondDb: 20,
  end: 'instrument',
  antennaDb: 2.15,
  over: 'isotropic',
};

describe('levels down a line', () => {
  it('go from part to part without a jump, and end where all gains together say', () => {
    fc.assert(
      fc.property(line, (one) => {
        const steps = lineSteps(one);
        expect(steps[0]?.from).toBe(one.levelDbm);
        steps.slice(1).forEach(({ from }, index) => {
          expect(from).toBe(steps[index]?.to);
        });
        expect(levelAtEnd(one)).toBeCloseTo(one.levelDbm + lineGain(one), 9);
      }),
    );
  });

  it('of the club are 27, 7, 6.9 and -13.1 dBm: 20, 0.1 and 20 dB taken away in turn', () => {
    expect(lineSteps(club).map(({ to }) => Number(to.toFixed(6)))).toEqual([27, 7, 6.9, -13.1]);
  });

  it('without a part are higher by what it takes', () => {
    fc.assert(
      fc.property(line, fc.constantFrom(...LINE_PARTS), (one, id) => {
        const gain = lineSteps(one).find((step) => step.id === id)?.gain ?? 0;
        expect(levelAtEnd(one, id)).toBeCloseTo(levelAtEnd(one) - gain, 9);
      }),
    );
  });

  it('to an antenna pass no pads', () => {
    expect(partsOfLine({ end: 'antenna' })).toEqual(['amplifier', 'coax']);
    expect(partsOfLine({ end: 'instrument' }, 'coax')).toEqual(['amplifier', 'first', 'second']);
  });
});

describe('what an antenna radiates', () => {
  it('is 2.15 dB less as ERP than as EIRP, whatever the antenna (ITU-R)', () => {
    fc.assert(
      fc.property(line, (one) => {
        const { eirp, erp } = radiatedLevels(one);
        expect(eirp - erp).toBeCloseTo(2.15, 9);
      }),
    );
  });

  it('is the level at the antenna plus the gain in dBi; a dipole of 0 dBd has 2.15 dBi', () => {
    const beam = { ...club, end: 'antenna' as const, coaxDb: 0.6, antennaDb: 5 };
    expect(radiatedLevels(beam).eirp).toBeCloseTo(27 - 0.6 + 5, 9);
    expect(radiatedLevels({ ...beam, antennaDb: 0, over: 'halfWaveDipole' })).toMatchObject({
      gainDbi: 2.15,
    });
  });
});

describe('the usual slips on a line', () => {
  const instrument = line.map((one) => ({ ...one, end: 'instrument' as const }));

  it('are off by the whole loss once or twice, to the side that each errs to', () => {
    fc.assert(
      fc.property(instrument, (one) => {
        const loss = -lineGain(one);
        expect(lineSlip('forgotten', one).error).toBeCloseTo(-loss, 9);
        expect(lineSlip('subtracted', one).error).toBeCloseTo(-2 * loss, 9);
        expect(lineSlip('twice', one).error).toBeCloseTo(loss, 9);
        expect(lineSlip('forgotten', one).stated).toBe(levelAtEnd(one));
      }),
    );
  });

  it('with the reference antenna are off by 2.15 dB, up or down', () => {
    fc.assert(
      fc.property(line, (one) => {
        const antenna = { ...one, end: 'antenna' as const };
        const wish = one.over === 'isotropic' ? 2.15 : -2.15;
        expect(lineSlip('reference', antenna).error).toBeCloseTo(wish, 9);
      }),
    );
    expect(LINE_SLIPS.map(slipEnd)).toEqual(['instrument', 'instrument', 'instrument', 'antenna']);
  });
});

describe('what the parts of a line may suffer', () => {
  const cautions = (one: Line, without?: 'first' | 'coax' | 'second') =>
    lineCautions({ line: one, damageDbm: 0, without });
  const heatOf = (id: string, one = club, without?: 'first') =>
    cautions(one, without).find((caution) => caution.code === 'padHeat' && caution.id === id);
  const input = (one: Line, without?: 'first' | 'second') =>
    cautions(one, without).find((caution) => caution.code === 'inputLevel' && caution.without === undefined);

  it('is reckoned with the upper end of the specification and the lowest attenuation before a part', () => {
    const upper = 10 ** ((27 + ABOVE_NOMINAL_DB) / 10) / 1000;
    const first = heatOf('first');
    if (first?.code !== 'padHeat') throw new Error('wish a heat');
    expect(first.incident).toBeCloseTo(upper, 9);
    expect(first.heat).toBeCloseTo(upper * (1 - 10 ** -2.05), 9); // at its highest attenuation it keeps most
    expect(input(club)).toMatchObject({
      level: expect.closeTo(28.5 - 19.5 - 0.05 - 19.5, 9),
      status: 'within',
    });
  });

  it('without a pad is too much for the input and for the pad that is left', () => {
    expect(input(club, 'first')).toMatchObject({
      level: expect.closeTo(28.5 - 0.05 - 19.5, 9),
      status: 'exceeded',
    });
    expect(heatOf('second', club, 'first')).toMatchObject({ status: 'exceeded' });
    expect(heatOf('second')).toMatchObject({ status: 'within' });
  });

  it('is nothing in a part of 0 dB, which is not there', () => {
    const bare = { ...club, coaxDb: 0, secondDb: 0 };
    expect(heatOf('coax', bare)).toBeUndefined();
    expect(heatOf('second', bare)).toBeUndefined();
    expect(input(bare)).toMatchObject({ level: expect.closeTo(28.5 - 19.5, 9) });
  });

  it('never counts a loss as a gain, however small it is', () => {
    fc.assert(
      fc.property(line, (one) => {
        const level = input({
          ...one,
          end: 'instrument',
          amplifierDb: 0,
          firstDb: 0.2,
          coaxDb: 0,
          secondDb: 0.1,
        });
        if (level?.code !== 'inputLevel') throw new Error('wish a level');
        expect(level.level).toBeCloseTo(one.levelDbm + ABOVE_NOMINAL_DB, 9);
      }),
    );
  });
});
