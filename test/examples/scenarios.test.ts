import { describe, expect, it } from 'vitest';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { beyondTheBandwidth } from '../../src/examples/beyond-the-bandwidth.ts';
import { borrowedCalibration, comparedSheet } from '../../src/examples/borrowed-calibration.ts';
import { clubTransmitter } from '../../src/examples/club-transmitter.ts';
import { dirtySignal } from '../../src/examples/dirty-signal.ts';
import type { ChainExample, Example } from '../../src/examples/example.ts';
import { fourReadingsOneLimit } from '../../src/examples/four-readings-one-limit.ts';
import { heatOfDirectCurrent } from '../../src/examples/heat-of-direct-current.ts';
import { keyedAndSpoken } from '../../src/examples/keyed-and-spoken.ts';
import { loadForgotten } from '../../src/examples/load-forgotten.ts';
import { lowOnTheScale } from '../../src/examples/low-on-the-scale.ts';
import { oneDiodeTwoLevels } from '../../src/examples/one-diode-two-levels.ts';
import { oscilloscopeOnALoad } from '../../src/examples/oscilloscope-on-a-load.ts';
import { padAgainstReflections } from '../../src/examples/pad-against-reflections.ts';
import { padMeasuredAtDc } from '../../src/examples/pad-measured-at-dc.ts';
import { swrOfAWhip } from '../../src/examples/swr-of-a-whip.ts';
import { thirtyDecibelsForgotten } from '../../src/examples/thirty-decibels-forgotten.ts';
import { benchResult } from '../bench-app/bench-result.ts';

// Every expectation is worked out beside it by hand, another way than the site's: with plain logarithms and divisors (GUM 4.3).

const ROOT3 = Math.sqrt(3);
const dbm = (watt: number): number => 10 * Math.log10(watt * 1000);
const watt = (level: number): number => 10 ** (level / 10) / 1000;
const resultOf = (example: ChainExample) => benchResult(example.sheet()).chain.result;
const step = (example: Example, id: string): string =>
  example
    .steps()
    .find((each) => each.id === id)
    ?.formula('ascii') ?? '';
const outcome = (example: Example, position: number): string => {
  const outcomes = example.kind === 'sum' ? example.outcomes() : (example.also?.() ?? []);
  return outcomes[position]?.value('ascii') ?? '';
};

describe('an oscilloscope across a load', () => {
  const power = 20.4 ** 2 / (8 * 49.6);
  const relative = Math.hypot((2 * 3) / ROOT3, (2 * 100 * 0.2) / 20.4 / ROOT3, 1 / ROOT3);

  it('comes to 1.049 W and 30.21 dBm, with u of 3.69 %', () => {
    expect(power).toBeCloseTo(1.0488, 4);
    const { estimate, propagation } = resultOf(oscilloscopeOnALoad);
    expect(estimate).toBeCloseTo(dbm(power), 2);
    expect(relative).toBeCloseTo(3.69, 2);
    expect(propagation.standardUncertainty).toBeCloseTo((10 / Math.LN10 / 100) * relative, 3);
    expect(step(oscilloscopeOnALoad, 'power')).toContain('= 1.049 W');
    expect(step(oscilloscopeOnALoad, 'level')).toContain('30.21 dBm');
  });

  it('reaches +9.3 and -8.7 % at worst', () => {
    const { lower, upper } = resultOf(oscilloscopeOnALoad).worstCase.interval;
    // To first order: the limits added are 6 + 1.96 + 1 %, and exactly they multiply.
    const volts = (sign: number): number => (1 + sign * 0.03) * (1 + (sign * 0.2) / 20.4);
    expect(watt(upper) / power).toBeCloseTo(volts(1) ** 2 * 1.01, 2);
    expect(watt(lower) / power).toBeCloseTo(volts(-1) ** 2 * 0.99, 2);
    expect(100 * (watt(upper) / power - 1)).toBeCloseTo(9.3, 0);
    expect(100 * (1 - watt(lower) / power)).toBeCloseTo(8.7, 0);
  });

  it('warns of four times too much where a trough to crest is taken for a peak', () => {
    expect(oscilloscopeOnALoad.mistake()).toContain('4.20\u00a0W');
    expect(oscilloscopeOnALoad.mistake()).toContain('1.040\u00a0W');
    expect(20.4 ** 2 / (2 * 49.6)).toBeCloseTo(4.195, 3);
  });

  it('lets the gain decide, and is inside its specification', () => {
    const { chain, judgement } = benchResult(oscilloscopeOnALoad.sheet());
    expect(chain.dominantIds).toEqual(['gain']);
    expect(judgement.verdict).toBe('inside');
  });
});

describe('a load that was forgotten', () => {
  it('claims four times the power, 6.02 dB too much', () => {
    expect(Math.sqrt(8 * 50 * 0.2)).toBeCloseTo(8.944, 3);
    expect(step(loadForgotten, 'with-load')).toContain('= 8.94 V');
    expect(step(loadForgotten, 'without-load')).toContain('= 17.89 V');
    expect(outcome(loadForgotten, 0)).toContain('0.800 W');
    expect(outcome(loadForgotten, 0)).toContain('6.02 dB');
    expect(10 * Math.log10(4)).toBeCloseTo(6.02, 2);
  });
});

describe('a handheld beyond the bandwidth', () => {
  it('would show 0.32 W by a front end of one pole, 4.92 dB too little', () => {
    expect(10 * Math.log10(1 + 1.45 ** 2)).toBeCloseTo(4.917, 3);
    expect(1 / (1 + 1.45 ** 2)).toBeCloseTo(0.322, 3);
    expect(step(beyondTheBandwidth, 'roll-off')).toContain('4.92 dB');
    expect(outcome(beyondTheBandwidth, 1)).toContain('320 mW');
  });

  it('is out of range here and on the bench', () => {
    expect(outcome(beyondTheBandwidth, 0)).toMatch(/^Out of range: /);
    const measurement = beyondTheBandwidth.bench?.();
    if (measurement === undefined) throw new Error('it must open on the bench');
    const shown = pointResult(measurement, measurement.points[0]?.id ?? '');
    expect(shown.inRange ? 'in range' : shown.reason.code).toBe('aboveBandwidth');
  });
});

describe('one diode at two levels', () => {
  const power = (volts: number): number => (volts + 0.55) ** 2 / 100;

  it('knows 3 W far better than 57.6 mW', () => {
    expect(1000 * power(1.85)).toBeCloseTo(57.6, 1);
    expect(power(16.77)).toBeCloseTo(3, 2);
    expect(outcome(oneDiodeTwoLevels, 0)).toContain('57.6 mW, 52.9 to 62.5');
    expect(outcome(oneDiodeTwoLevels, 0)).toContain('+0.35/-0.37 dB');
    expect(outcome(oneDiodeTwoLevels, 1)).toContain('+/-0.05 dB');
    expect(1000 * (2.3 ** 2 / 100)).toBeCloseTo(52.9, 1);
    expect(1000 * (2.5 ** 2 / 100)).toBeCloseTo(62.5, 1);
  });

  it('loses 2.26 dB or 0.28 dB where the drop is forgotten', () => {
    expect(20 * Math.log10(1.85 / 2.4)).toBeCloseTo(-2.26, 2);
    expect(20 * Math.log10(16.77 / 17.32)).toBeCloseTo(-0.28, 2);
    for (const text of ['34.2\u00a0mW', '2.26\u00a0dB', '2.81\u00a0W', '0.28\u00a0dB'])
      expect(oneDiodeTwoLevels.mistake()).toContain(text);
  });
});

describe('a wave that is no sine', () => {
  it('moves a peak by +0.83/-0.92 dB, a tenth of that behind the filter, and the mean by 0.04 dB', () => {
    expect(20 * Math.log10(1.1)).toBeCloseTo(0.83, 2);
    expect(20 * Math.log10(0.9)).toBeCloseTo(-0.92, 2);
    expect(outcome(dirtySignal, 0)).toBe('+0.83/-0.92 dB at 20 dB down; +/-0.09 dB at 40');
    expect(outcome(dirtySignal, 1)).toContain('0.04 dB');
    expect(10 * Math.log10(1.01)).toBeCloseTo(0.04, 2);
  });

  it('is decided by the harmonic', () => {
    expect(benchResult(dirtySignal.sheet()).chain.dominantIds).toEqual(['harmonics']);
  });

  it('takes the known harmonic of unknown phase for a U shape, divided by the root of 2', () => {
    const drop = (((0.1 / 7.08) * 20) / Math.LN10 / ROOT3) ** 2;
    const harmonic = (-20 * Math.log10(0.9)) ** 2 / 2;
    const { expanded } = resultOf(dirtySignal).propagation;
    expect(expanded).toBeCloseTo(2 * Math.sqrt(drop + harmonic), 1);
    expect(expanded).toBeGreaterThan(2 * Math.sqrt(drop + (harmonic * 2) / 3) + 0.1);
  });
});

describe('a pad measured at DC', () => {
  it('comes to 10.006 dB within 0.07, and its gain cancels on one range', () => {
    expect(20 * Math.log10(3 / 0.948)).toBeCloseTo(10.006, 3);
    const u = (20 / Math.LN10) * (0.005 / ROOT3) * Math.SQRT2;
    expect(2 * u).toBeCloseTo(0.071, 3);
    expect(outcome(padMeasuredAtDc, 0)).toBe('10.006 dB +/-0.071 dB, k = 2');
    expect(step(padMeasuredAtDc, 'one-range')).toMatch(/= 0 dB$/);
  });

  it('is off by 0.04 dB for a percent of the load', () => {
    expect(step(padMeasuredAtDc, 'load')).toMatch(/0\.0(?:39|4[0-3]) dB/);
  });

  it('is three pads of 1.5, 0.87 and 1.0 dB by the data sheet', () => {
    expect(0.5 * ROOT3).toBeCloseTo(0.87, 2);
    expect(2 * (0.5 / ROOT3) * ROOT3).toBeCloseTo(1, 12);
    expect(step(padMeasuredAtDc, 'three-pads')).toMatch(/\+\/-1\.5 dB.*\+\/-0\.87 dB.*\+\/-1\.0 dB/);
  });
});

describe('low on the scale', () => {
  it('is 2 to 4 W: +1.25 and -1.76 dB about what was read', () => {
    expect(10 * Math.log10(4 / 3)).toBeCloseTo(1.25, 2);
    expect(10 * Math.log10(2 / 3)).toBeCloseTo(-1.76, 2);
    expect(step(lowOnTheScale, 'worst-case')).toContain('+1.25/-1.76 dB about 34.77 dBm');
    expect(step(lowOnTheScale, 'of-the-reading')).toContain('2.0 to 4.0 W');
  });

  it('has its middle where the mean of the level is, a little below the reading', () => {
    // Mean of 10 lg(1 + e), e even between -1/3 and 1/3: by the integral of the logarithm.
    const e = 1 / 3;
    const meanLn = ((1 + e) * Math.log(1 + e) - (1 - e) * Math.log(1 - e)) / (2 * e) - 1;
    expect(resultOf(lowOnTheScale).estimate).toBeCloseTo(dbm(3) + (10 / Math.LN10) * meanLn, 3);
  });
});

describe('the SWR of a whip', () => {
  it('keeps 4.8 W and shows 1.50, which may be 1.34 to 1.69', () => {
    const gamma = Math.sqrt(0.2 / 5);
    const leak = 10 ** (-25 / 20);
    const swr = (g: number): number => (1 + g) / (1 - g);
    expect(swr(gamma - leak)).toBeCloseTo(1.34, 2);
    expect(swr(gamma + leak)).toBeCloseTo(1.69, 2);
    expect(outcome(swrOfAWhip, 0)).toBe('4.8 W, -0.18 dB');
    expect(outcome(swrOfAWhip, 1)).toBe('1.50, and truly from 1.34 to 1.69');
    expect(step(swrOfAWhip, 'reflection')).toContain('13.98 dB');
  });
});

describe('the same heat by direct current', () => {
  it('comes to 2.02 W, with u of 1.04 %', () => {
    const power = (10 * 0.1995 * 14.2) / 14;
    expect(power).toBeCloseTo(2.0235, 4);
    const parts = [0.5, 1, (100 * 0.1) / 14.2, (100 * 0.1) / 14, 1].map((limit) => limit / ROOT3);
    const relative = Math.hypot(...parts);
    expect(relative).toBeCloseTo(1.04, 2);
    const { estimate, propagation } = resultOf(heatOfDirectCurrent);
    expect(watt(estimate)).toBeCloseTo(power, 3);
    expect(propagation.standardUncertainty).toBeCloseTo((10 / Math.LN10 / 100) * relative, 3);
    expect(propagation.expanded).toBeCloseTo(0.09, 2);
    expect(step(heatOfDirectCurrent, 'rise')).toContain('2.02 W');
  });
});

describe('keyed, spoken, and the same meter', () => {
  it('shows 0.88 W of 2 W keyed, and 2 W of 4 W with two tones', () => {
    expect(outcome(keyedAndSpoken, 0)).toBe('0.88 W of 2.0 W PEP, -3.57 dB');
    expect(10 * Math.log10(22 / 50)).toBeCloseTo(-3.57, 2);
    expect(outcome(keyedAndSpoken, 1)).toBe('PEP 4.0 W, mean 2.0 W');
    expect(40 ** 2 / 400).toBe(4);
  });
});

describe('a borrowed calibration', () => {
  it('corrects by -0.75 dB, known to 0.30 dB', () => {
    const u = Math.hypot(0.1, 0.06 / Math.sqrt(5), 0.05 / ROOT3, 0.1 / ROOT3, 0.1 / ROOT3, 0.1 / Math.SQRT2);
    expect(u).toBeCloseTo(0.152, 3);
    const { propagation } = benchResult(comparedSheet()).chain.result;
    expect(propagation.standardUncertainty).toBeCloseTo(u, 9);
    expect(propagation.expanded).toBeCloseTo(0.3, 2);
    expect(outcome(borrowedCalibration, 0)).toBe('-0.75 dB +/-0.30 dB, k = 2');
  });

  it('makes 7.15 dBm of a later 7.90, known to 0.38 dB', () => {
    const again = Math.hypot(0.06, 0.05 / ROOT3, 0.1 / ROOT3, 0.1 / Math.SQRT2);
    const { estimate, propagation } = resultOf(borrowedCalibration);
    expect(estimate).toBeCloseTo(7.15, 9);
    expect(propagation.standardUncertainty).toBeCloseTo(Math.hypot(0.152, again), 3);
    expect(propagation.expanded).toBeCloseTo(0.38, 2);
  });
});

describe('four readings and one specification', () => {
  it('has one inside, one outside, and two that cannot be told, at 27 % and 66 %', () => {
    const said = [0, 1, 2, 3].map((position) => outcome(fourReadingsOneLimit, position));
    expect(said[0]).toMatch(/: inside .*more than 99\.9 %/);
    expect(said[1]).toMatch(/: can't tell.*27 %/);
    expect(said[2]).toMatch(/: outside .*less than 0\.1 %/);
    expect(said[3]).toMatch(/: can't tell.*66 %/);
  });

  it('opens on the bench with four points of the same verdicts', () => {
    const measurement = fourReadingsOneLimit.bench?.();
    const verdicts = measurement?.points.map(({ id }) => {
      const shown = pointResult(measurement, id);
      return shown.inRange ? shown.result.judgement.verdict : 'no number';
    });
    expect(verdicts).toEqual(['inside', 'cant-tell', 'outside', 'cant-tell']);
  });
});

describe('a pad against reflections', () => {
  it('leaves 0.08 dB if it is perfect, and +0.34/-0.36 if it is real', () => {
    const [source, meter, pad] = [1 / 3, 1 / 9, 0.15 / 2.15];
    const through = 10 ** -0.6 * source * meter;
    const at = (sign: number): number =>
      20 * Math.log10((1 + sign * source * pad) * (1 + sign * pad * meter) + sign * through);
    expect(at(1)).toBeCloseTo(0.34, 2);
    expect(at(-1)).toBeCloseTo(-0.36, 2);
    expect(step(padAgainstReflections, 'limits')).toContain('+0.32/-0.33 dB');
    expect(20 * Math.log10(1 + source * meter)).toBeCloseTo(0.32, 2);
    expect(step(padAgainstReflections, 'perfect-pad')).toBe('+/-0.08 dB');
    expect(step(padAgainstReflections, 'real-pad')).toBe('+0.34/-0.36 dB');
    expect(outcome(padAgainstReflections, 1)).toBe('0.23 dB and 0.16 dB');
  });
});

describe('thirty decibels in the log book', () => {
  it('is 9.70 dBm and 9.33 mW, not 9.3 uW', () => {
    expect(10 ** 0.97).toBeCloseTo(9.33, 2);
    expect(outcome(thirtyDecibelsForgotten, 0)).toBe('9.70 dBm, 9.33 mW');
    expect(outcome(thirtyDecibelsForgotten, 1)).toContain('9.3 uW');
  });

  it('has a mean of 11.0 dBm in decibels and 11.24 as powers', () => {
    expect(10 * Math.log10((10 + 10 + 10 ** 1.3) / 3)).toBeCloseTo(11.24, 2);
    expect(outcome(thirtyDecibelsForgotten, 2)).toBe('11.0 dBm in decibels, 11.24 dBm as powers');
  });
});

describe('the club’s transmitter', () => {
  it('is the demonstration of the bench: 27.1 dBm within 0.69 dB', () => {
    const { estimate, propagation } = resultOf(clubTransmitter);
    expect(estimate).toBeCloseTo(7 + 20 + 0.1, 9);
    const u = Math.hypot(0.01, 0.03, 0.25 / ROOT3, 0.16 / Math.SQRT2, 0.5 / ROOT3, 0.05 / ROOT3);
    expect(propagation.expanded).toBeCloseTo(2 * u, 9);
    expect(step(clubTransmitter, 'add-back')).toContain('= 27.1 dBm');
  });

  it('is a hundredth of it where the pad is left out, coax and all', () => {
    expect(clubTransmitter.mistake()).toContain(`${(1000 * watt(7.1)).toFixed(1)}\u00a0mW instead of`);
  });
});
