import { describe, expect, test } from 'vitest';
import { asLink } from '../../src/bench/instruments/as-link.ts';
import { correctionAt, found } from '../../src/borrow/calibration.ts';
import { demonstrationEntries } from '../../src/borrow/demonstration.ts';
import type { Outcome } from '../../src/borrow/outcome.ts';
import { fitting, kindsFor, savedTo } from '../../src/borrow/saved.ts';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { readEntries } from '../../src/instruments/read-kept.ts';
import { readRows } from '../../src/text/read/rows.ts';
import { firstNumber } from '../bench-app/typed-sheet.ts';
import { calibrated, part } from './prepared.ts';

type Usable = Exclude<Outcome, { kind: 'none' }>;
const ofTurns = (...given: Parameters<typeof calibrated>): Usable => ({
  kind: 'calibration',
  calibration: calibrated(...given),
});
const ofPart = (...given: Parameters<typeof part>): Usable => ({ kind: 'part', part: part(...given) });
const level = { kind: 'level', min: -100, max: 100, decimals: 0 } as const;
const gain = { kind: 'gain', min: -20, max: 20, decimals: 0 } as const;

describe('a calibration saved to an instrument', () => {
  test('of one level is one correction, with date, lender and conditions', () => {
    expect(savedTo(ofTurns('oneLevel'), { kind: 'meter' })).toMatchObject({
      kind: 'meter',
      label: 'Our power meter',
      basis: 'calibration',
      source: 'borrowed',
      from: 'Power meter of the neighbouring club; U = 0.2\u00a0dB (k\u00a0=\u00a02) by its certificate; 3.58 MHz, 22 °C, indoors',
      by: 'nothing',
      correction: '-0.75',
      uncertainty: '0.305',
      table: '',
      factor: '2.001',
      calibrated: '2026-05-09',
      unit: 'dB',
    });
  });

  test('of several levels is a table that reads back as the line', () => {
    const line = calibrated('line');
    const saved = savedTo({ kind: 'calibration', calibration: line }, { kind: 'meter' });
    expect(saved).toMatchObject({ by: 'level', correction: '0', uncertainty: '' });
    const { rows, problems } = readRows(saved.table, [level, gain, { ...gain, kind: 'halfWidthDb', min: 0 }]);
    expect(problems).toEqual([]);
    expect(rows).toHaveLength(4);
    rows.forEach(({ values: [at = 0, correction, expanded] }, index) => {
      const place = line.places[index]?.at ?? 0;
      const read = found(correctionAt(line, place));
      expect(at).toBeCloseTo(place, 2);
      expect(correction).toBeCloseTo(read.value, 2);
      expect(expanded).toBeCloseTo(read.propagation.expanded, 2);
    });
  });

  test('of places with coverage factors of their own keeps the standard uncertainty of each', () => {
    // three places far from any line: one degree of freedom, and a larger factor where the line counts more
    const places = ['7.0; 8.0; 7.0', '9.0; 9.4; 9.0', '11.0; 12.0; 11.0'].map((readings, index) => ({
      id: `place${index + 1}`,
      at: '',
      readings: `${readings}\n${readings.replace('.0', '.02')}`,
    }));
    const line = calibrated('line', { places, later: '' });
    const saved = savedTo({ kind: 'calibration', calibration: line }, { kind: 'meter' });
    const of = line.places.map(({ at }) => found(correctionAt(line, at)).propagation);
    const factors = of.map(({ coverageFactor }) => coverageFactor);
    expect(Math.max(...factors) / Math.min(...factors)).toBeGreaterThan(1.05);
    saved.table.split('\n').forEach((row, index) => {
      const expanded = Number(row.split(';')[2]);
      expect(expanded / Number(saved.factor)).toBeCloseTo(of[index]?.standardUncertainty ?? 0, 3);
    });
  });

  test('of two rounds that hardly agree keeps a factor that an instrument may have', () => {
    const two = [{ id: 'place1', at: '', readings: '7.0; 8.0; 7.0\n7.0; 9.0; 7.0' }];
    const turns = ofTurns('oneLevel', { places: two, later: '' });
    const saved = savedTo(turns, { kind: 'meter' });
    expect(saved.factor).toBe('10');
    const found = turns.kind === 'calibration' ? turns.calibration.places[0]?.propagation : undefined;
    expect(found?.coverageFactor).toBeGreaterThan(10);
    expect(Number(saved.uncertainty) / 10).toBeCloseTo(found?.standardUncertainty ?? 0, 3);
  });

  test('of few rounds keeps how few: a sheet that counts it claims no less than was found', () => {
    const few = [{ id: 'place1', at: '', readings: '7.0; 8.0; 7.0\n7.0; 9.4; 7.0\n7.0; 8.1; 7.0' }];
    const turns = ofTurns('oneLevel', { places: few, later: '' });
    const saved = savedTo(turns, { kind: 'meter' });
    const found = turns.kind === 'calibration' ? turns.calibration.places[0]?.propagation : undefined;
    if (found === undefined) throw new Error('wish a place, got none');
    expect(found.degreesOfFreedom).toBeGreaterThan(2);
    expect(found.degreesOfFreedom).toBeLessThan(4);
    expect(saved.freedom, 'cut to a whole number').toBe(String(Math.floor(found.degreesOfFreedom)));
    const counted = firstNumber({
      points: [{ readings: '7 dBm' }],
      links: [asLink(saved, { id: 'link1', unit: 'dB' })],
    });
    const { expanded } = counted.result.chain.result.propagation;
    expect(expanded).toBeGreaterThanOrEqual(found.expanded - 0.001);
    expect(savedTo(ofTurns('oneLevel'), { kind: 'meter' }).freedom, 'as good as known').toBe('');
    expect(savedTo(ofPart('dc'), { kind: 'pad' }).freedom).toBe('');
  });

  test('of several places keeps the degrees of freedom of the one that has least', () => {
    const line = calibrated('line', {
      places: ['7.0; 8.0; 7.0', '9.0; 9.4; 9.0', '11.0; 12.0; 11.0'].map((readings, index) => ({
        id: `place${index + 1}`,
        at: '',
        readings: `${readings}\n${readings.replace('.0', '.02')}`,
      })),
      later: '',
    });
    const least = Math.min(
      ...line.places.map(({ at }) => found(correctionAt(line, at)).propagation.degreesOfFreedom),
    );
    const saved = savedTo({ kind: 'calibration', calibration: line }, { kind: 'meter' });
    expect(saved.freedom).toBe(String(Math.floor(least + 1e-6)));
  });

  test('of several frequencies keeps them apart down to the hertz', () => {
    const entries = demonstrationEntries('line');
    const places = entries.places.map((place, index) => ({ ...place, at: `7.00000${index + 1} MHz` }));
    const saved = savedTo(ofTurns('line', { along: 'frequency', places, later: '' }), { kind: 'meter' });
    expect(saved.by).toBe('frequency');
    expect(saved.table.split('\n').map((line) => line.split(';')[0])).toEqual([
      '7.000001',
      '7.000002',
      '7.000003',
      '7.000004',
    ]);
  });

  test('limits of a data sheet are told as such', () => {
    const saved = savedTo(ofTurns('oneLevel', { stated: 'rectangular', lender: '' }), { kind: 'meter' });
    expect(saved.from).toMatch(/^a lent instrument; limits ±0\.2\sdB by its data sheet/);
  });

  test('takes the place of what counted before, and leaves the rest alone', () => {
    const mine = {
      ...blankInstrument('meter'),
      label: 'The blue one',
      serial: '17',
      amount: '1',
      interval: '12',
      notes: 'mind the fuse',
    };
    const saved = savedTo(ofTurns('oneLevel'), mine);
    expect(saved).toMatchObject({
      label: 'The blue one',
      serial: '17',
      amount: '1',
      interval: '12',
      notes: 'mind the fuse',
    });
    expect(saved.basis).toBe('calibration');
  });

  test('is an instrument that can be kept and read again', () => {
    for (const outcome of [ofTurns('oneLevel'), ofTurns('line'), ofPart('dc'), ofPart('swap')]) {
      const saved = savedTo(outcome, { kind: kindsFor(outcome)[0] ?? 'other' });
      expect(readEntries(JSON.parse(JSON.stringify(saved)))).toEqual(saved);
    }
  });
});

describe('a part saved to an instrument', () => {
  test('a new one gets the nearest whole loss, and the rest as its correction', () => {
    expect(savedTo(ofPart('dc'), { kind: 'pad' })).toMatchObject({
      kind: 'pad',
      label: '10 dB pad',
      loss: '10',
      correction: '0.006',
      source: 'measured',
      from: 'at DC with a multimeter; 22 °C, indoors',
    });
    expect(savedTo(ofPart('swap'), { kind: 'pad' })).toMatchObject({ loss: '20', correction: '-0.105' });
  });

  test('one that states a loss keeps it', () => {
    const mine = { ...blankInstrument('pad'), label: 'A', loss: '19.8 dB' };
    expect(savedTo(ofPart('swap'), mine)).toMatchObject({ loss: '19.8 dB', correction: '0.095' });
    const unreadable = { ...mine, loss: 'about twenty' };
    expect(savedTo(ofPart('swap'), unreadable)).toMatchObject({ loss: 'about twenty', correction: '-0.105' });
  });

  test('is a pad or a cable, an instrument is none', () => {
    expect(kindsFor(ofPart('dc'))).toEqual(['pad', 'cable']);
    expect(kindsFor(ofTurns('oneLevel'))).toEqual(['meter', 'other']);
    expect(kindsFor({ kind: 'none', fault: 'noScatter' })).toEqual(['meter', 'other']);
    const list = (['meter', 'pad', 'load', 'other', 'cable'] as const).map((kind) => ({
      value: blankInstrument(kind),
    }));
    const kindsOf = (outcome: Outcome) => fitting(outcome, list).map(({ value }) => value.kind);
    expect(kindsOf(ofPart('dc'))).toEqual(['pad', 'cable']);
    expect(kindsOf(ofTurns('oneLevel'))).toEqual(['meter', 'other']);
  });
});
