import { describe, expect, it } from 'vitest';
import type { Rule } from '#compute';
import { judge, propagate } from '#compute';
import { betterInputs } from '../../src/bench/help/better-inputs.ts';
import { helpOf, readingsHelp, targetsOf } from '../../src/bench/help/help.ts';
import { type HelpFound, helpWork } from '../../src/bench/help/help-work.ts';
import { type NumberedPoint, pointResult } from '../../src/bench/results/point-result.ts';
import { inSlices } from '../../src/bench/slices.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import { blankLink, type LinkEntries } from '../../src/sheet/entries.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { SETUPS } from './check-question.ts';

const club = (change: Partial<Measurement> = {}): NumberedPoint =>
  numbered({ ...measurementOf(clubSheet()), ...change });

function numbered(measurement: Measurement): NumberedPoint {
  const shown = pointResult(measurement, measurement.points[0]?.id ?? '');
  if (!shown.inRange) throw new Error(shown.reason.code);
  return shown;
}

const twoPads = (): NumberedPoint => numbered(measurementOf(twoPadsSheet()));

const better = (id: string, texts: Partial<LinkEntries>): LinkEntries => ({ ...blankLink(id), ...texts });

/** The found, step by step. */
function work(point: NumberedPoint, entries: readonly LinkEntries[] = []) {
  const help = helpOf(point, entries);
  const told: HelpFound[] = [];
  for (const step of helpWork(help, (found) => told.push(found))) step();
  return { help, told, last: told.at(-1) };
}

describe('what could be improved', () => {
  it('is every link that widens the band, the widest first, all shares together one', () => {
    for (const point of [club(), twoPads()]) {
      const { links } = helpOf(point, []);
      const shares = links.map(({ share }) => share);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 4);
    }
  });

  it('takes links of one cause together', () => {
    const { links } = measurementOf(clubSheet());
    const tied = links.map((link, index) =>
      index >= links.length - 2 ? { ...link, cause: 'one box' } : link,
    );
    const group = helpOf(club({ links: tied }), []).links.find(({ ids }) => ids.length === 2);
    expect(group?.ids).toEqual(tied.slice(-2).map(({ id }) => id));
  });
});

describe('the work of finding it out', () => {
  it('tells each link as it is complete, in order, and the cheapest change last', () => {
    const { help, told, last } = work(twoPads());
    expect(told).toHaveLength(help.links.length + 1);
    expect(last?.rows.map(({ link }) => link)).toEqual(help.links.map(({ ids }) => ids));
    expect(told.slice(0, -1).every(({ cheapest }) => cheapest === undefined)).toBe(true);
    expect(last?.cheapest).toBeDefined();
  });

  it('leaves less of the band the more of a link is taken away', () => {
    const point = club();
    const now = point.result.chain.result.propagation.expanded;
    for (const { perfect, halved } of work(point).last?.rows ?? []) {
      expect(perfect.expanded).toBeLessThanOrEqual(halved.expanded);
      expect(halved.expanded).toBeLessThan(now);
    }
  });

  it('begins with what the result says, for every method', () => {
    for (const method of METHODS) {
      const measurement = measurementOf(clubSheet());
      const columns = { readings: [7], reflected: [0.01], riseDc: [14], volts: [10], amperes: [0.05] };
      const readings = {
        padsIntoMeter: 7,
        oscilloscope: 14,
        peakDetector: 6.8,
        inLine: 10,
        dcSubstitution: 14,
      };
      const [point] = measurement.points;
      if (point === undefined) throw new Error('a measurement has a point');
      const shown = numbered({
        ...measurement,
        setup: SETUPS[method],
        points: [{ ...point, frequencyHz: 3.58e6, columns: { ...columns, readings: [readings[method]] } }],
      });
      const { last, help } = work(shown);
      expect(last?.rows).toHaveLength(help.links.length);
      const [widest] = last?.rows ?? [];
      expect(widest?.perfect.expanded).toBeCloseTo(shown.result.improvement?.perfectDb ?? Number.NaN, 9);
      expect(widest?.halved.expanded).toBeCloseTo(shown.result.improvement?.halvedDb ?? Number.NaN, 9);
    }
  });

  it('is stopped between two steps by the next edit, and then tells nothing more', async () => {
    const stop = new AbortController();
    const told: HelpFound[] = [];
    const steps = helpWork(helpOf(twoPads(), []), (found) => {
      told.push(found);
      stop.abort();
    });
    const done = await inSlices({ steps, signal: stop.signal, pause: () => Promise.resolve() });
    expect(done).toBe(false);
    expect(told).toHaveLength(1);
  });

  it('pauses between any two evaluations if each takes long', async () => {
    let [clock, pauses] = [0, 0];
    const help = helpOf(twoPads(), []);
    await inSlices({
      steps: helpWork(help, () => undefined),
      signal: new AbortController().signal,
      now: () => {
        clock += 100;
        return clock;
      },
      pause: () => {
        pauses += 1;
        return Promise.resolve();
      },
    });
    expect(pauses).toBeGreaterThanOrEqual(3 * help.links.length);
  });
});

describe('a better part', () => {
  it('of half the amount is what halving gives, shape and all', () => {
    const point = club();
    const entries = [better('pad', { form: 'rectangular', unit: 'dB', amount: '0.5', better: '±0,25 dB' })];
    const { help, last } = work(point, entries);
    const row = last?.rows.find(({ link }) => link.includes('pad'));
    const link = point.sheet.links.find(({ id }) => id === 'pad');
    expect(link?.statement).toMatchObject({ halfWidth: 0.5 });
    expect(row?.replaced?.expanded).toBeCloseTo(row?.halved.expanded ?? Number.NaN, 12);
    expect(row?.replaced?.probabilityOfConformity).toBeCloseTo(
      row?.halved.probabilityOfConformity ?? Number.NaN,
      9,
    );
    expect(help.links.find(({ ids }) => ids.includes('pad'))?.better).toBe('stated');
    expect(help.links.filter(({ better: status }) => status === 'none')).toHaveLength(help.links.length - 1);
  });

  it('that cannot be read is told, and holds nothing up', () => {
    const { help, last } = work(club(), [better('pad', { unit: 'dB', better: 'much' })]);
    expect(help.links.find(({ ids }) => ids.includes('pad'))?.better).toBe('unusable');
    expect(last?.rows.every(({ replaced }) => replaced === undefined)).toBe(true);
  });

  it('stands as limits in decibels for a mismatch of two SWRs and a sum of terms', () => {
    const links = measurementOf(clubSheet()).links.map((link) =>
      link.id === 'mismatch'
        ? ({ ...link, stated: { form: 'swr', sourceSwr: 2, loadSwr: 1.3 } } as const)
        : link,
    );
    const { sheet } = club({ links });
    expect(sheet.links.find(({ id }) => id === 'mismatch')?.reflections).toBeDefined();
    const { inputs } = betterInputs(sheet, [better('mismatch', { form: 'swr', better: '0.1' })]);
    expect(inputs.map(({ id, distribution }) => [id, distribution.shape, distribution.limits])).toEqual([
      ['mismatch', 'arcsine', { lower: -0.1, upper: 0.1 }],
    ]);
  });

  it('of a link that is no longer there, or stated in another unit by now, is left aside', () => {
    const { sheet } = club();
    expect(betterInputs(sheet, [better('gone', { better: '0.1' })])).toEqual({ inputs: [], unusable: [] });
    expect(betterInputs(sheet, [better('pad', { unit: 'percentOfPower', better: '3' })])).toEqual({
      inputs: [],
      unusable: ['pad'],
    });
  });
});

describe('the cheapest change', () => {
  it('turns a verdict that cannot tell into one, and a little less does not', () => {
    const point = twoPads();
    expect(point.result.judgement.verdict).toBe('cant-tell');
    const change = work(point).last?.cheapest;
    if (change?.kind !== 'change') throw new Error(change?.kind);
    expect(change.verdict).toBe('inside');
    expect(change.factor).toBeGreaterThan(0);
    expect(change.factor).toBeLessThan(1);
  });

  it('is none where the verdict is there', () => {
    expect(work(club()).last?.cheapest).toEqual({ kind: 'decided', verdict: 'inside' });
  });
});

describe('more readings', () => {
  const withReadings = (readings: number[]): NumberedPoint => {
    const measurement = measurementOf(clubSheet());
    const points = measurement.points.map((point) => ({ ...point, columns: { ...point.columns, readings } }));
    return numbered({ ...measurement, points });
  };

  it('pay as long as their scatter counts: s/sqrt(n) against everything else', () => {
    const help = readingsHelp(withReadings([6.5, 7.5, 7]));
    expect(help).toMatchObject({ count: 3, scatterDb: expect.closeTo(0.5, 9) });
    // the club's links by hand: U/2, a/sqrt 3, a/sqrt 2; then GUM 4.2.3: n = ceil((s/u)^2 / (1.05^2 - 1))
    const squares = 0.01 ** 2 + 0.03 ** 2 + 0.16 ** 2 / 2 + (0.25 ** 2 + 0.5 ** 2 + 0.05 ** 2) / 3;
    expect(help?.pay).toBe(Math.ceil(0.25 / squares / (1.05 ** 2 - 1)));
    expect(help?.pay).toBe(21);
    expect(readingsHelp(withReadings([7.0, 7.001, 7.0]))?.pay).toBe(1);
  });

  it('are not judged where one reading says nothing of its scatter', () => {
    const { repeatability: _, ...measurement } = measurementOf(clubSheet());
    const points = measurement.points.map((point) => ({
      ...point,
      columns: { ...point.columns, readings: [7] },
    }));
    expect(readingsHelp(numbered({ ...measurement, points }))).toBe(undefined);
  });
});

describe('the target uncertainty', () => {
  const by = (rule: Rule) => targetsOf(club({ rule }));

  it('is the room to the nearer limit over the multiplier of the guard band', () => {
    const { result, sheet } = club();
    const { estimate } = result.chain.result;
    const { lower = 0, upper = 0 } = sheet.specification;
    const room = Math.min(estimate - lower, upper - estimate);
    expect(by({ kind: 'guardBand', multiplier: 1 }).verdict?.expanded).toBeCloseTo(room, 12);
    expect(by({ kind: 'guardBand', multiplier: 2 }).verdict?.expanded).toBeCloseTo(room / 2, 12);
    expect(by({ kind: 'simple' }).verdict).toBe(undefined);
  });

  it('of a required probability is where a bell has just that share beyond the limit', () => {
    const point = club({ rule: { kind: 'probability', required: 0.99 } });
    const wanted = targetsOf(point).verdict;
    // 2.326 standard deviations of a normal distribution hold 99 % to one side
    const { estimate } = point.result.chain.result;
    const { lower = 0, upper = 0 } = point.sheet.specification;
    const room = Math.min(estimate - lower, upper - estimate);
    expect(wanted?.expanded).toBeCloseTo((2 * room) / 2.3263478740408408, 9);
  });

  it('of the specification is a third of what it allows to either side', () => {
    expect(by({ kind: 'simple' }).specificationDb).toBeCloseTo(0.5, 12);
    const points = measurementOf(clubSheet()).points.map((point) => ({
      ...point,
      specification: { upper: 28 },
    }));
    expect(targetsOf(club({ points })).specificationDb).toBe(undefined);
  });
});

describe('the question', () => {
  it('is judged as the result itself is', () => {
    const point = twoPads();
    const { question } = helpOf(point, []);
    const { expanded } = propagate({ model: question.model, coverageProbability: COVERAGE_PROBABILITY });
    expect(expanded).toBe(point.result.chain.result.propagation.expanded);
    expect(judge({ ...question, result: point.result.chain.result }).verdict).toBe(
      point.result.judgement.verdict,
    );
  });
});
