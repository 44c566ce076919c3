import { describe, expect, it } from 'vitest';
import { CHECKS_OF } from '../../src/bench/validity/check-kinds.ts';
import { allowanceNote, checkLines, failedChecks } from '../../src/bench/validity/check-words.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { checkQuestion } from './check-question.ts';

const BAD = {
  stepWithout: '7',
  stepWith: '-2',
  stepPad: '10',
  stepAllowed: '0.4',
  off: '-13',
  reconnections: '7\n7.02',
};

describe('the checks in words', () => {
  it('name every check that is offered, made or not', () => {
    for (const method of METHODS) {
      const lines = checkLines('ascii', checkQuestion(method, {}));
      expect(lines.map(({ check }) => check)).toEqual(CHECKS_OF[method]);
      for (const { heading, says } of lines) {
        expect(heading).toMatch(/: not made$/);
        expect(says).toBe('');
      }
    }
  });

  it('say what was found, what was allowed, and whether that is so', () => {
    const lines = checkLines('ascii', checkQuestion('padsIntoMeter', BAD));
    expect(lines.map(({ heading, says }) => `${heading}. ${says}`.trim())).toEqual([
      'One more known pad: failed. 10.0 dB more moved the reading by 9.00 dB; 0.40 dB of difference was allowed. It moved too little: something is overloaded without the pad, or near its floor with it.',
      'Reading without signal: passed. The reading stands 20.0 dB above what is shown without a signal, which adds up to 0.044 dB; 0.10 dB was allowed.',
      'Connectors off and on again: says nothing yet. 2 connections scatter by 0.014 dB (standard deviation) and differ by 0.020 dB at most; 0.10 dB of scatter was allowed. Five connections or more are needed to say that it is good.',
      'Warm-up and key-down drift: not made.',
      'Harmonics: not made.',
    ]);
  });

  it('count one minute as one', () => {
    const texts = { warmUpMinutes: '0\n0.5\n1', warmUpLevels: '7\n7\n7' };
    const says = checkLines('ascii', checkQuestion('padsIntoMeter', texts)).map((line) => line.says);
    expect(says.join(' ')).toContain(' in 1 minute; ');
  });

  it('are plain ASCII where that is asked for', () => {
    const texts = { ...BAD, warmUpMinutes: '0\n5\n10', warmUpLevels: '7\n6.9\n6.8', secondHarmonic: '-20' };
    for (const method of METHODS)
      for (const { heading, says } of checkLines('ascii', checkQuestion(method, texts)))
        expect(`${heading} ${says}`).toMatch(/^[ -~]*$/);
  });

  it('a failed check is a caution that says what to do', () => {
    const told = failedChecks('shown', checkQuestion('padsIntoMeter', BAD));
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^Check failed: One more known pad\. .*Read with the pad left in/);
    expect(failedChecks('shown', checkQuestion('padsIntoMeter', {}))).toEqual([]);
  });

  it('what an empty allowance stands for is said', () => {
    expect(allowanceNote('ascii', checkQuestion('inLine', {}, 0.3))).toBe(
      'Empty: 0.10 dB, a third of the standard uncertainty.',
    );
    expect(allowanceNote('ascii', checkQuestion('inLine', {}, 0))).toMatch(/^Needed/);
  });
});
