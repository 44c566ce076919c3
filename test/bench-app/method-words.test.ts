import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelDbm, ohms, powerW } from '#compute';
import { demandText, measurandText, recordSentences } from '../../src/bench/words/measured-words.ts';
import { methodText, rangeText } from '../../src/bench/words/method-words.ts';
import type { MethodSetup } from '../../src/sheet/method.ts';
import { anyComputed } from './any-measurement.ts';
import { firstNumber } from './typed-sheet.ts';

describe('the method in words', () => {
  it('is one sentence for any set-up that can be typed, plain ASCII where that is asked for', () => {
    fc.assert(
      fc.property(anyComputed, ({ measurement: { setup } }) => {
        const text = methodText('ascii', setup);
        expect(text).toMatch(/^By [ -~]+[^.]\.$/);
        expect(text).not.toMatch(/undefined|NaN/);
      }),
    );
  });

  it('names the levels between which a meter holds, as far as they are stated', () => {
    const held = (range: { floor?: number; largest?: number }): string =>
      methodText('ascii', {
        method: 'padsIntoMeter',
        shows: 'peakEnvelope',
        ...(range.floor !== undefined && { floor: levelDbm(range.floor) }),
        ...(range.largest !== undefined && { largest: levelDbm(range.largest) }),
      });
    expect(held({})).toMatch(/receiver; it shows peak envelope power\.$/);
    expect(held({ floor: -20 })).toMatch(/; it holds from -20 dBm upwards\.$/);
    expect(held({ largest: 13 })).toMatch(/; it holds up to 13 dBm\.$/);
    expect(held({ floor: -20, largest: 13.5 })).toMatch(/; it holds from -20 dBm to 13\.5 dBm\.$/);
  });

  it('gives an oscilloscope’s bandwidths in megahertz, that of the probe last, and whether it is terminated', () => {
    const scope = {
      method: 'oscilloscope',
      resistance: ohms(49.8),
      bandwidthsHz: [100e6, 62.5e6],
      terminated: true,
    } as const satisfies MethodSetup;
    expect(methodText('ascii', scope)).toBe(
      'By oscilloscope across a load of 49.8 ohm; bandwidth 100 MHz and 62.5 MHz; terminated.',
    );
    const alone = methodText('ascii', { ...scope, bandwidthsHz: [100e6], terminated: false });
    expect(alone).toContain('bandwidth 100 MHz; not terminated.');
  });

  it('tells a diode drop that was measured from one that was taken as fixed', () => {
    const detector = { method: 'peakDetector', resistance: ohms(50), diodeDropV: 0.25 } as const;
    expect(methodText('ascii', { ...detector, curveFromDc: true })).toContain('from a curve taken with DC');
    expect(methodText('ascii', { ...detector, curveFromDc: false })).toBe(
      'By peak detector across 50 ohm; diode drop 0.25 V, taken as fixed.',
    );
  });

  it('gives each range of a meter in line with its own full scale and limits', () => {
    expect(rangeText('ascii', { fullScale: powerW(20), percentOfFullScale: 5 })).toBe(
      '5 % of 20.0 W full scale',
    );
    const text = methodText('ascii', {
      method: 'inLine',
      shows: 'mean',
      forward: { fullScale: powerW(20), percentOfFullScale: 5 },
      reflected: { fullScale: powerW(0.2), percentOfFullScale: 7.5 },
    });
    expect(text).toContain('forward 5 % of 20.0 W full scale; reflected 7.5 % of 200 mW full scale');
  });

  it('is spoken without signs that nobody can say', () => {
    const spoken = methodText('spoken', { method: 'dcSubstitution', resistance: ohms(49.8) });
    expect(spoken).toBe('By substitution with DC in a load of 49.8 ohms.');
  });
});

describe('what was measured', () => {
  const measurand = { power: 'carrier', plane: '', conditions: '' } as const;

  it('is told without gaps where plane or conditions are not', () => {
    const say = (change: object): string =>
      measurandText('ascii', { measurand: { ...measurand, ...change } });
    expect(say({})).toBe('Carrier power.');
    expect(say({ plane: 'at the socket' })).toBe('Carrier power at the socket.');
    expect(say({ conditions: '12 V' })).toBe('Carrier power; 12 V.');
    expect(say({ power: 'mean', delivery: 'net', plane: 'at the socket', conditions: '12 V' })).toBe(
      'Mean power forward less reflected, at the socket; 12 V.',
    );
  });

  it('tells what a licence allows apart from what a data sheet promises', () => {
    const specification = { upper: 28.5 };
    expect(demandText('ascii', { specification })).toBe('Specified: at most 28.5 dBm.');
    expect(demandText('ascii', { specification, licence: true })).toBe(
      'The licence allows at most 28.5 dBm.',
    );
    expect(demandText('ascii', { specification: { lower: 25, upper: 28.5 } })).toContain('25.0 to 28.5 dBm');
  });

  it('comes in an order in which another person can repeat it: what, how, readings, what was demanded', () => {
    const point = firstNumber({ sheet: { plane: 'at the socket' } });
    const sentences = recordSentences('ascii', point);
    expect(sentences.map((sentence) => sentence.split(' ')[0])).toEqual([
      'Carrier',
      'By',
      'Reading',
      'One',
      'Specified:',
    ]);
    const several = firstNumber({ points: [{ readings: '27 dBm\n27.1 dBm' }] });
    expect(recordSentences('ascii', several).join(' ')).not.toContain('One reading');
  });
});
