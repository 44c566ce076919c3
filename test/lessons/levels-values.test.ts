import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { limits } from '../../src/sheet/link.ts';

const value = (name: string): string => textOfValue(`levels.${name}`);
const nb = '\u00a0';
const milliwatts = (dbm: number): number => 10 ** (dbm / 10);
const dbm = (mw: number): number => 10 * Math.log10(mw);

describe('the numbers of the lesson on levels, each by hand', () => {
  it('are the line of the transmitter and of the reading', () => {
    expect(value('nominal')).toBe(`27${nb}dBm`);
    expect(value('nominalPower')).toBe(`${milliwatts(27).toFixed(0)}${nb}mW`);
    expect(value('behindPads')).toBe(`1.0${nb}dBm`);
    expect(value('behindPadsPower')).toBe(`${milliwatts(1).toFixed(2)}${nb}mW`);
    expect(value('socket')).toBe(`27.1${nb}dBm`);
    expect(value('socketPower')).toBe(`${milliwatts(27.1).toFixed(0)}${nb}mW`);
  });

  it('are round levels', () => {
    expect(value('watt')).toBe(`30${nb}dBm`);
    expect(value('tenth')).toBe(`100${nb}µW`);
    expect(value('thousandth')).toBe(`1.00${nb}µW`);
  });

  it('are two signals as powers', () => {
    const both = 2 * milliwatts(17);
    expect(value('each')).toBe(`${milliwatts(17).toFixed(1)}${nb}mW`);
    expect(value('bothPower')).toBe(`${both.toFixed(0)}${nb}mW`);
    expect(value('both')).toBe(`${dbm(both).toFixed(1)}${nb}dBm`);
    expect(value('bothMore')).toBe(`+${dbm(2).toFixed(2)}${nb}dB`);
    expect(value('weakMore')).toBe(`+${dbm(1.1).toFixed(2)}${nb}dB`);
  });

  it('are two signals as volts', () => {
    const one = Math.sqrt((milliwatts(17) / 1000) * 50);
    expect(value('oneVolts')).toBe(`${one.toFixed(2)}${nb}V RMS`);
    expect(value('bothVolts')).toBe(`${(2 * one).toFixed(2)}${nb}V RMS`);
    expect(value('inPhasePower')).toBe(`${(4 * milliwatts(17)).toFixed(0)}${nb}mW`);
    expect(value('inPhase')).toBe(`${(17 + dbm(4)).toFixed(1)}${nb}dBm`);
    expect(value('inPhaseMore')).toBe(`+${dbm(4).toFixed(2)}${nb}dB`);
    expect(value('thirdTurn')).toBe(`17.0${nb}dBm`); // two sides and the base of an even-sided triangle
    const tenth = 1 / Math.sqrt(10);
    expect(value('weakUp')).toBe(`+${(2 * dbm(1 + tenth)).toFixed(2)}${nb}dB`);
    expect(value('weakDown')).toBe(`−${Math.abs(2 * dbm(1 - tenth)).toFixed(2)}${nb}dB`);
  });

  it('are what the mistakes cost', () => {
    expect(value('costSum')).toBe(`${(milliwatts(34) / 1000).toFixed(2)}${nb}W claimed for 100${nb}mW`);
    expect(value('costThreeDbm')).toBe(
      `${(milliwatts(27) + milliwatts(3)).toFixed(0)}${nb}mW for 1.00${nb}W`,
    );
    expect(value('costNoReference')).toBe(`1${nb}W or 1${nb}kW?`);
    expect(value('costForgotten')).toBe(`${milliwatts(7.1).toFixed(2)}${nb}mW for 513${nb}mW`);
    expect(value('costSubtracted')).toBe(`${(1000 * milliwatts(-13.1)).toFixed(1)}${nb}µW for 513${nb}mW`);
    expect(value('costZero')).toBe(`no power for 1${nb}mW`);
  });

  it('are the cautions at the upper limit of the specification', () => {
    expect(value('upper')).toBe(`28.5${nb}dBm`);
    // A pad of 20 dB within 0.5 dB takes 19.5 dB at least; the meter is the one of the club's sheet.
    expect(value('padLeast')).toBe(`19.5${nb}dB`);
    expect(value('meterLevel')).toBe(`${(28.5 - 19.5).toFixed(1)}${nb}dBm`);
    const pad = clubSheet().links.find(({ id }) => id === 'pad');
    expect(pad).toMatchObject({ lossDb: 20, statement: limits(0.5) });
    expect(value('stands')).toBe(`20${nb}dBm`);
    expect(value('damage')).toBe(`${(28.5 - 20).toFixed(1)}${nb}dB`);
    expect(value('padHeat')).toBe(`${((1 - 10 ** -2.05) * milliwatts(28.5)).toFixed(0)}${nb}mW`);
  });
});
