import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bankQuestion, bankQuestions } from '../../../src/questions/bank/index.ts';
import { MISCONCEPTIONS, type MisconceptionId } from '../../../src/questions/bank/misconceptions.ts';
import { hasNumbers, numbered, sittingsOf } from './all.ts';

/** What examinations ask with numbers, and the questions of the bank that train it. */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  'watts to dBm and back': ['watts-to-dbm', 'dbm-to-watts'],
  doublings: ['doublings'],
  'steps of three and ten': ['steps-of-three-and-ten'],
  'decibels of loss to the share that is left': ['loss-to-percent-left', 'one-db-down'],
  'level at the end of a chain': ['chain-level'],
  'power at the end of a chain': ['chain-power'],
  'the link that is missing': ['missing-pad'],
  'peak, peak to peak and RMS': ['peak-of-rms', 'rms-of-peak-to-peak'],
  'power from the height of a trace': ['power-of-peak-to-peak', 'power-of-peak-to-peak-typed'],
  'volts to be expected': ['rms-expected', 'peak-to-peak-expected'],
  'another load than fifty ohms': ['load-of-75', 'load-true-power'],
  'peak envelope power of two tones, and their mean': ['pep-of-two-tones', 'mean-of-two-tones'],
  'a steady carrier takes no factor': ['pep-of-steady-carrier', 'fm-mean'],
  'efficiency and heat': ['efficiency', 'heat-in-transmitter'],
  'heat in a pad': ['heat-in-pad', 'heat-in-second-pad'],
  'cable by length and frequency': ['cable-by-length', 'cable-by-frequency', 'cable-power-left'],
  'standing-wave ratio from powers or a resistor': ['swr-of-powers', 'swr-of-load'],
  'return loss to per cent': ['return-loss-to-percent'],
  'what a meter does to the circuit or the wave': [
    'meter-across-divider',
    'digital-meter-loading',
    'average-meter-on-square',
  ],
  'radiated power': ['eirp-level', 'eirp-with-dipole-gain', 'erp-of-eirp'],
};

/** The pitfalls below them, each with the mistake that stands for it. */
const PITFALLS: Readonly<Record<string, MisconceptionId>> = {
  'halve before squaring': 'vpp-as-vp',
  'ten or twenty times the logarithm': 'twenty-for-ten',
  'per cent of a gain for a loss': 'gain-for-loss',
  'RMS or peak': 'vp-as-rms',
  'no factor for a carrier': 'carrier-factor',
  'dBd or dBi': 'dipole-for-isotropic',
  'milliwatts in the logarithm': 'milliwatts-for-watts',
  'sign of a loss': 'sign-of-loss',
  'per cent of full scale': 'percent-of-reading',
  'frequency limit of a meter': 'meter-frequency',
  'wave form and a meter': 'average-meter',
};

describe.each(Object.entries(ASKED))('%s', (_, ids) => {
  it('is trained by questions with drawn numbers', () => {
    for (const id of ids) {
      const question = bankQuestion(id);
      expect(hasNumbers(question), id).toBe(true);
    }
  });
});

describe.each(Object.entries(PITFALLS))('%s', (_, id) => {
  it('is a wrong answer somewhere, with a name', () => {
    const known = bankQuestions().filter((question) =>
      JSON.stringify(sittingsOf(question)[0]?.payload).includes(`"${id}"`),
    );
    expect(known.length).toBeGreaterThan(0);
    expect(MISCONCEPTIONS[id].name).not.toBe('');
  });
});

describe('questions with numbers', () => {
  it('each have another way to their answer, or to their place, among these tests', () => {
    const folder = 'test/questions/bank';
    const tests = readdirSync(folder)
      .filter((file) => file.endsWith('.test.ts') && !/^(coverage|laws|mark)/.test(file))
      .map((file) => readFileSync(`${folder}/${file}`, 'utf8'))
      .join('\n');
    const without = numbered().filter(
      ({ id }) => !new RegExp(`^ +'?${id}'?: \\(n\\)|bankQuestion\\('${id}'\\)`, 'm').test(tests),
    );
    expect(without.map(({ id }) => id)).toEqual([]);
  });
});
