import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CheckOutcome } from '../../src/bench/validity/check-found.ts';
import { CHECK_FIELDS, CHECKS_OF, type CheckKind, respondsTo } from '../../src/bench/validity/check-kinds.ts';
import { checkOutcomes } from '../../src/bench/validity/check-outcome.ts';
import { checkSpec } from '../../src/bench/validity/check-spec.ts';
import { checkStrings } from '../../src/bench/validity/check-strings.ts';
import { CHECK_KEYS, type CheckKey } from '../../src/sheet/check-keys.ts';
import { METHODS, type MethodKind } from '../../src/sheet/method.ts';
import { checkQuestion, SETUPS } from './check-question.ts';

type Texts = Partial<Record<CheckKey, string>>;

const of = (check: CheckKind, method: MethodKind, texts: Texts, uncertaintyDb?: number): CheckOutcome => {
  const outcome = checkOutcomes(checkQuestion(method, texts, uncertaintyDb)).find(
    (each) => each.check === check,
  );
  if (outcome === undefined) throw new Error(`${check} is not offered for ${method}`);
  return outcome;
};
const status = (...args: Parameters<typeof of>) => of(...args).status;
const finding = (...args: Parameters<typeof of>) => {
  const outcome = of(...args);
  if (!('found' in outcome)) throw new Error(JSON.stringify(outcome));
  return outcome.found;
};

const anyText = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '0',
    '-0',
    '1,5',
    '−20',
    '10 dB',
    '1e999',
    'NaN',
    '7 dBm\n7,1',
    '0\n5\n10',
    'x\ny',
    '3 K',
  ),
  fc.double({ noNaN: true }).map(String),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
);
const anyChecks = fc.record(
  Object.fromEntries(CHECK_KEYS.map((key) => [key, anyText])) as Record<CheckKey, typeof anyText>,
);

describe('the checks of a method', () => {
  it('each have fields of their own and a reason', () => {
    for (const method of METHODS) {
      const reasons: Readonly<Record<string, string>> = checkStrings.why[method];
      expect(Object.keys(reasons).toSorted()).toEqual([...CHECKS_OF[method]].toSorted());
      for (const check of CHECKS_OF[method]) expect(reasons[check]).toMatch(/^[A-Z].*\.$/);
      const fields = CHECKS_OF[method].flatMap((check) => CHECK_FIELDS[check]);
      expect(new Set(fields).size).toBe(fields.length);
    }
    expect(new Set(Object.values(CHECK_FIELDS).flat())).toEqual(new Set(CHECK_KEYS));
  });

  it('know limits for every field that accept something', () => {
    for (const method of METHODS)
      for (const key of CHECK_KEYS) {
        const { min, max } = checkSpec(method, key);
        expect(min).toBeLessThan(max);
      }
  });

  it('take any texts without falling over, and then say of each where it stands', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...METHODS),
        anyChecks,
        fc.option(fc.constantFrom(0, 0.3, 5)),
        (method, texts, u) => {
          const outcomes = checkOutcomes(checkQuestion(method, texts, u ?? undefined));
          expect(outcomes.map(({ check }) => check)).toEqual(CHECKS_OF[method]);
          for (const outcome of outcomes) {
            const typed = CHECK_FIELDS[outcome.check].some((key) => texts[key].trim() !== '');
            expect(outcome.status === 'notMade').toBe(!typed);
            if (outcome.status === 'begun')
              expect(outcome.missing.length + outcome.problems.length).toBeGreaterThan(0);
          }
        },
      ),
    );
  });

  it('are not made as long as nothing is typed', () => {
    for (const method of METHODS)
      expect(checkOutcomes(checkQuestion(method, {})).map((each) => each.status)).toEqual(
        CHECKS_OF[method].map(() => 'notMade'),
      );
  });
});

describe('one more known pad', () => {
  const step: Texts = { stepWithout: '7.0', stepWith: '−3.1 dBm', stepPad: '10', stepAllowed: '0,4' };

  it('passes where the reading follows, fails where it does not, and says which way', () => {
    expect(status('step', 'padsIntoMeter', step)).toBe('passed');
    expect(finding('step', 'padsIntoMeter', step)).toMatchObject({
      movedDb: expect.closeTo(10.1, 9),
      stepDb: 10,
    });
    expect(finding('step', 'padsIntoMeter', { ...step, stepWith: '-2.5' })).toMatchObject({
      outcome: 'moved-too-little',
    });
    expect(status('step', 'padsIntoMeter', { ...step, stepWith: '-3.5' })).toBe('failed');
  });

  it('is read in volts where a trace is: a tenth of the volts is 20 dB', () => {
    const found = finding('step', 'oscilloscope', {
      ...step,
      stepWithout: '14.2',
      stepWith: '1.42 V',
      stepPad: '20',
    });
    expect(found).toMatchObject({ movedDb: expect.closeTo(20, 9) });
  });

  it('counts the diode drop: a detector with 0.25 V of drop reads less than a tenth at a tenth of the crest', () => {
    const texts = { ...step, stepWithout: '6.75', stepWith: '0.45', stepPad: '20' };
    expect(finding('step', 'peakDetector', texts)).toMatchObject({ movedDb: expect.closeTo(20, 9) });
  });

  it('asks for what the pad may be off by: no result can tell that', () => {
    expect(of('step', 'padsIntoMeter', { ...step, stepAllowed: '' }, 0.3)).toEqual({
      check: 'step',
      status: 'begun',
      missing: ['stepAllowed'],
      problems: [],
    });
  });
});

describe('the reading without signal', () => {
  it('adds its power to a meter: 20 dB below 0.04 dB, 10 dB below 0.46 dB', () => {
    expect(finding('floor', 'padsIntoMeter', { off: '-13' })).toMatchObject({
      adds: 'powers',
      noiseDb: expect.closeTo(-10 * Math.log10(0.99), 9),
    });
    expect(status('floor', 'padsIntoMeter', { off: '-13' })).toBe('passed');
    expect(status('floor', 'padsIntoMeter', { off: '-3' })).toBe('failed');
    expect(status('floor', 'padsIntoMeter', { off: '-3', offAllowed: '0.5' })).toBe('passed');
    expect(finding('floor', 'padsIntoMeter', { off: '8' })).toMatchObject({
      noiseDb: Number.POSITIVE_INFINITY,
    });
  });

  it('adds its volts to a detector, drop and all: 68 mV of 6.8 V are 1/100 of 7.05 V of crest', () => {
    expect(finding('floor', 'peakDetector', { off: '68 mV' })).toMatchObject({
      adds: 'volts',
      noiseDb: expect.closeTo(-20 * Math.log10(1 - 0.068 / 7.05), 9),
    });
  });

  it('of nothing at all is the best there is, in every unit but dBm', () => {
    for (const method of ['oscilloscope', 'peakDetector', 'inLine', 'dcSubstitution'] as const)
      expect(of('floor', method, { off: '0' })).toMatchObject({
        status: 'passed',
        found: { marginDb: Number.POSITIVE_INFINITY, noiseDb: 0 },
      });
  });

  it('is held against the lowest of several points', () => {
    const question = checkQuestion('padsIntoMeter', { off: '-13' });
    const [point] = question.measurement.points;
    if (point === undefined) throw new Error('a measurement has a point');
    const low = { ...point, id: 'point2', columns: { ...point.columns, readings: [-10, -10] } };
    const measurement = { ...question.measurement, points: [point, low] };
    const floor = checkOutcomes({ ...question, measurement }).find(({ check }) => check === 'floor');
    expect(floor).toMatchObject({ status: 'failed', found: { marginDb: 3 } });
  });
});

describe('connectors off and on again', () => {
  it('scatter by the standard deviation of the levels, and need five to be called good', () => {
    const five = '7.00\n7.02\n6.99\n7.01\n7.03';
    expect(finding('reconnection', 'padsIntoMeter', { reconnections: five })).toMatchObject({
      count: 5,
      standardDeviationDb: expect.closeTo(0.0158114, 6),
      largestDb: expect.closeTo(0.04, 9),
    });
    expect(status('reconnection', 'padsIntoMeter', { reconnections: five })).toBe('passed');
    expect(status('reconnection', 'padsIntoMeter', { reconnections: '7.00\n7.02' })).toBe('unclear');
    expect(status('reconnection', 'padsIntoMeter', { reconnections: '7.0\n8.0' })).toBe('failed');
  });

  it('one connection is none taken off', () => {
    expect(of('reconnection', 'padsIntoMeter', { reconnections: '7.00' })).toMatchObject({
      status: 'begun',
      problems: [{ path: 'check.reconnections', problem: checkStrings.tooFew(2) }],
    });
  });
});

describe('drift', () => {
  const minutes = '0\n5\n10\n15';

  it('is the line through readings against time, from the first to the last', () => {
    const texts = { warmUpMinutes: minutes, warmUpLevels: '7.00\n6.95\n6.90\n6.85' };
    expect(finding('drift', 'padsIntoMeter', texts)).toMatchObject({
      minutes: 15,
      totalDb: expect.closeTo(-0.15, 9),
      expandedDb: expect.closeTo(0, 9),
    });
    expect(status('drift', 'padsIntoMeter', texts)).toBe('failed');
    expect(status('drift', 'padsIntoMeter', texts, 0.6)).toBe('passed');
  });

  it('says nothing where it is lost in the scatter', () => {
    const texts = { warmUpMinutes: minutes, warmUpLevels: '7.0\n8.0\n6.5\n7.6' };
    expect(status('drift', 'padsIntoMeter', texts)).toBe('unclear');
    const hidden = { ...texts, warmUpLevels: '7.0\n7.3\n6.7\n7.0' };
    expect(status('drift', 'padsIntoMeter', hidden)).toBe('unclear');
    expect(status('drift', 'padsIntoMeter', hidden, 30)).toBe('passed');
  });

  it('a load that still warms up is not steady: 14.0 to 14.6 K are 0.18 dB', () => {
    const texts = { warmUpMinutes: '10\n11\n12', warmUpLevels: '14.0\n14.3\n14.6' };
    expect(finding('steady', 'dcSubstitution', texts)).toMatchObject({
      totalDb: expect.closeTo(10 * Math.log10(14.6 / 14), 2),
    });
    expect(status('steady', 'dcSubstitution', texts)).toBe('failed');
    expect(status('steady', 'dcSubstitution', { ...texts, warmUpLevels: '14.60\n14.59\n14.60' })).toBe(
      'passed',
    );
  });

  it('readings and minutes must go together, and minutes must pass', () => {
    expect(of('drift', 'padsIntoMeter', { warmUpMinutes: minutes, warmUpLevels: '7\n7\n7' })).toMatchObject({
      problems: [{ path: 'check.warmUpLevels' }],
    });
    expect(of('drift', 'padsIntoMeter', { warmUpMinutes: '5\n5\n5', warmUpLevels: '7\n7\n7' })).toMatchObject(
      {
        problems: [{ path: 'check.warmUpMinutes', problem: checkStrings.oneTime }],
      },
    );
    expect(of('drift', 'padsIntoMeter', { warmUpLevels: '7\n7\n7' })).toMatchObject({
      missing: ['warmUpMinutes'],
    });
  });
});

describe('harmonics', () => {
  it('20 dB down move a crest by +0.83 or -0.92 dB and raise a mean by 0.04 dB', () => {
    for (const method of ['oscilloscope', 'peakDetector', 'inLine'] as const)
      expect(finding('harmonics', method, { secondHarmonic: '-20 dBc' })).toMatchObject({
        responds: 'peak',
        lowerDb: expect.closeTo(-0.915, 3),
        upperDb: expect.closeTo(0.828, 3),
      });
    for (const method of ['padsIntoMeter', 'dcSubstitution'] as const)
      expect(finding('harmonics', method, { secondHarmonic: '−20' })).toMatchObject({
        responds: 'mean',
        lowerDb: 0,
        upperDb: expect.closeTo(0.0432, 4),
      });
    expect(status('harmonics', 'oscilloscope', { secondHarmonic: '-20' })).toBe('failed');
    expect(status('harmonics', 'oscilloscope', { secondHarmonic: '-50', thirdHarmonic: '-55' })).toBe(
      'passed',
    );
  });

  it('either of them alone will do, but not an allowance alone', () => {
    expect(status('harmonics', 'oscilloscope', { thirdHarmonic: '-50' })).toBe('passed');
    expect(of('harmonics', 'oscilloscope', { harmonicsAllowed: '0.2' })).toMatchObject({
      missing: ['secondHarmonic'],
    });
  });

  it('above the carrier are refused beside their field', () => {
    expect(of('harmonics', 'inLine', { secondHarmonic: '20' })).toMatchObject({
      problems: [{ path: 'check.secondHarmonic' }],
    });
  });

  it('a meter for the crest is moved by volts, one for the mean by power', () => {
    expect(respondsTo({ method: 'padsIntoMeter', shows: 'peakEnvelope' })).toBe('peak');
    expect(respondsTo(SETUPS.padsIntoMeter)).toBe('mean');
  });
});

describe('what may be left without notice', () => {
  it('is a third of the standard uncertainty, which widens the band by a twentieth', () => {
    const texts = { off: '-13' };
    expect(of('floor', 'padsIntoMeter', texts, 0.3)).toMatchObject({ allowedDb: expect.closeTo(0.1, 12) });
    expect(Math.hypot(1, 1 / 3)).toBeCloseTo(1.054, 3);
  });

  it('must be said where there is no result, or an exact one', () => {
    const { measurement, checks } = checkQuestion('padsIntoMeter', { off: '-13' });
    for (const uncertaintyDb of [undefined, 0]) {
      const [, floor] = checkOutcomes({ measurement, checks, uncertaintyDb });
      expect(floor).toMatchObject({ status: 'begun', missing: ['offAllowed'] });
    }
  });
});
