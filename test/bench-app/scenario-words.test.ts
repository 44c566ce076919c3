import { describe, expect, it } from 'vitest';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { type NumberedPoint, type PointResult, pointResult } from '../../src/bench/results/point-result.ts';
import { budgetLines } from '../../src/bench/words/budget.ts';
import { cautionWords } from '../../src/bench/words/caution-words.ts';
import { pointsInOrder } from '../../src/bench/words/point-order.ts';
import { pointRows, pointsSummary } from '../../src/bench/words/points-words.ts';
import { aloneWords, summarise } from '../../src/bench/words/result-words.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import { conformityText, verdictReasons, verdictSentence } from '../../src/bench/words/verdict-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/words/ways.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import {
  blankLink,
  blankPoint,
  type LinkEntries,
  type PointEntries,
  type SheetEntries,
} from '../../src/sheet/entries.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';

/** Whole measurements with invented data, typed as a reader would type them; every expected number was worked by hand. */
const typed = (
  method: SheetEntries['method'],
  sheet: Partial<SheetEntries>,
  points: readonly Partial<PointEntries>[],
  links: readonly Partial<LinkEntries>[],
): Measurement => {
  const { measurement, problems } = readMeasurement({
    ...blankSheet(method),
    title: 'A transmitter',
    plane: 'at its socket',
    ...sheet,
    points: points.map((point, index) => ({
      ...blankPoint(`point${index + 1}`),
      nominal: '30',
      tolerance: '3',
      ...point,
    })),
    links: links.map((link, index) => ({
      ...blankLink(`link${index + 1}`),
      label: `Link ${index + 1}`,
      ...link,
    })),
  });
  if (measurement === undefined)
    throw new Error(`typed: wish a measurement, got ${JSON.stringify(problems)}`);
  return measurement;
};
const resultsOf = (measurement: Measurement): readonly PointResult[] =>
  measurement.points.map(({ id }) => pointResult(measurement, id));
const numbered = (measurement: Measurement): readonly NumberedPoint[] =>
  resultsOf(measurement).map((result) => {
    if (!result.inRange) throw new Error(`numbered: wish a number, got ${result.reason.code}`);
    return result;
  });
const first = (measurement: Measurement): NumberedPoint => {
  const [result] = numbered(measurement);
  if (result === undefined) throw new Error('first: wish a point, got none');
  return result;
};
const worst = (point: NumberedPoint) => waysOf('ascii', point.result)[0];

describe('an oscilloscope across a load of 49.6 ohm', () => {
  const scope = (sheet: Partial<SheetEntries> = {}, links: readonly Partial<LinkEntries>[] = []) =>
    typed(
      'oscilloscope',
      { load: '49.6', scopeBandwidth: '100', ...sheet },
      [{ frequency: '7.03', readings: '20.4' }],
      [
        { label: 'Gain', unit: 'percentOfVolts', amount: '3' },
        { label: 'Screen', unit: 'voltsPeakToPeak', amount: '0.2' },
        { label: 'Load', unit: 'percentOfResistance', amount: '1' },
        ...links,
      ],
    );

  // 20.4^2/(8 x 49.6) = 1.0488 W = 30.207 dBm, and 0.011 dB for the middle of the roll-off; u = 3.69 % of power = 0.160 dB.
  it('reads 30.22 dBm +-0.32 dB, and in watts farther up than down', () => {
    const point = first(scope());
    expect(summarise(point)).toContain('30.22 decibel-milliwatts plus or minus 0.32 decibels');
    const watts = statedForms('ascii', point.result).find(({ key }) => key === 'watts')?.text;
    expect(watts).toMatch(/^1\.05\d? W, \+0\.08\d?\/-0\.07\d? W/);
    expect(watts).toContain('k = 2, 95.45 %');
  });

  it('has the gain as its dominant part, by 88 % of the variance, and the roll-off as a part of the method', () => {
    const { result } = first(scope());
    const lines = budgetLines('ascii', result);
    // (6/sqrt 3)^2 of (6^2 + 1.961^2 + 1^2)/3 = 36/40.84, roll-off left out of the account.
    expect(lines.find(({ label }) => label === 'Gain')?.share).toBe('88.0 %');
    expect(lines[0]).toMatchObject({
      label: 'Roll-off of the oscilloscope',
      source: 'the method',
      stated: '0.000 to 0.021 dB, limits',
      loss: '0.01 dB',
    });
    expect(result.improvement).toMatchObject({ labels: ['Gain'], others: 0 });
  });

  it('tells the measurement apart from the transmitter’s own spread', () => {
    const spread = scope({}, [{ label: 'Supply and heat', kind: 'transmitter', amount: '0.5' }]);
    const { result } = first(spread);
    // u = hypot(0.160, 0.5/sqrt 3) = 0.330 dB
    expect(aloneWords('ascii', result)).toMatch(
      /alone is good to \+\/-0\.32 dB; .* own spread it is \+\/-0\.66 dB/,
    );
    expect(aloneWords('ascii', first(scope()).result)).toBeUndefined();
  });

  it('warns by the peak of the upper limit: 33 dBm into 49.6 ohm is 14.1 V', () => {
    // 33 dBm = 1.9953 W; sqrt(2 x 1.9953 x 49.6) = 14.07 V
    const { sheet, result } = first(scope({ largestPeak: '10' }));
    const words = cautionWords('ascii', { sheet, cautions: result.cautions });
    expect(words).toEqual([
      expect.objectContaining({
        exceeded: true,
        text: expect.stringMatching(/gets 14\.1 V .*stands 10\.0 V only/),
      }),
    ]);
  });

  it('says in words why it has no number at 145 MHz, and still what arrives at its input', () => {
    const far = typed('oscilloscope', { scopeBandwidth: '100' }, [{ frequency: '145', readings: '14' }], []);
    const [out] = resultsOf(far);
    if (out === undefined || out.inRange) throw new Error('wish a point out of range');
    expect(summarise(out)).toMatch(/^Out of range: the frequency is 1\.45 of the bandwidth/);
    expect(cautionWords('ascii', { sheet: out.sheet, cautions: out.cautions })[0]?.text).toContain('14.1 V');
  });
});

describe('one diode on two transmitters', () => {
  const detector = typed(
    'peakDetector',
    { drop: '0.55' },
    [
      { label: 'small', readings: '1.85', nominal: '17', tolerance: '1' },
      { label: 'large', readings: '16.77', nominal: '35', tolerance: '1' },
    ],
    [{ label: 'Diode drop', unit: 'volts', amount: '0.1' }],
  );

  it('is trusted to -0.37/+0.35 dB at 57.6 mW and to 0.05 dB at 3.00 W', () => {
    const [small, large] = numbered(detector);
    if (small === undefined || large === undefined) throw new Error('wish two points');
    // (1.85 + 0.55)^2/100 = 57.6 mW; 2.3^2/100 = 52.9 mW, 2.5^2/100 = 62.5 mW; (16.77 + 0.55)^2/100 = 3.000 W
    expect(worst(small)?.power).toBe('52.9 to 62.5 mW');
    expect(summarise(small)).toContain('57.6 milliwatts');
    expect(summarise(large)).toMatch(/3\.000? watts/);
    expect(
      large.result.chain.result.worstCase.interval.upper - large.result.chain.result.estimate,
    ).toBeCloseTo(0.05, 3);
  });

  it('sees twice the peak in reverse: 39.8 V at 36 dBm', () => {
    // 36 dBm = 3.981 W in 50 ohm: peak sqrt(2 x 3.981 x 50) = 19.95 V, twice that in reverse
    const large = numbered(detector)[1];
    const words = cautionWords('ascii', {
      sheet: large?.sheet ?? first(detector).sheet,
      cautions: large?.result.cautions ?? [],
    });
    expect(words.map(({ text }) => text).join(' ')).toContain('39.9 V in reverse');
  });
});

describe('two pads into a receiver', () => {
  const pads = typed(
    'padsIntoMeter',
    {},
    [{ readings: '-13.4', nominal: '27', tolerance: '1.5' }],
    [
      { label: 'Receiver', kind: 'meter', amount: '2' },
      { label: 'Mismatch', kind: 'mismatch', form: 'arcsine', amount: '0.2' },
      { label: 'Cable', kind: 'cable', loss: '0.2', amount: '0.1' },
      { label: 'Pad B', kind: 'pad', loss: '20', amount: '0.5' },
      { label: 'Pad A', kind: 'pad', loss: '20', amount: '0.5' },
    ],
  );

  // u^2 = (4 + 0.01 + 2 x 0.25)/3 + 0.02: U = 2.47 dB; worst 2 + 0.2 + 0.1 + 2 x 0.5 = 3.3 dB; the shapes together end at 2.18
  // (k 1.77); 478.6 mW, to the tens that U bears 480.
  it('comes to 26.8 dBm +-2.5 dB, worst case 23.5 to 30.1 dBm', () => {
    const point = first(pads);
    expect(summarise(point)).toContain(
      '26.8 decibel-milliwatts plus or minus 2.5 decibels, 480 milliwatts, 270 to 840',
    );
    expect(worst(point)?.level).toBe('23.5 to 30.1 dBm');
    expect(waysOf('ascii', point.result)[2]?.level).toMatch(/^24\.6 to 29\.0 dBm$/);
  });

  it('says that one rectangle outweighs the rest, so that k = 2 covers too much', () => {
    const why = whyWaysDiffer('ascii', first(pads).result);
    expect(why).toMatch(/^The worst case is 1\.3 times as wide/);
    expect(why).toMatch(/1\d % narrower than propagation/);
  });

  it('cannot be judged: nothing could be inside 27 +-1.5 dBm with so wide a band', () => {
    const point = first(pads);
    expect(verdictSentence(point)).toMatch(/^Can’t tell/);
    expect(verdictReasons('ascii', point).join(' ')).toContain('+/-1.5 dB or better');
  });
});

describe('an in-line meter at the bottom of its scale', () => {
  it('shows 3 W that may be 2 to 4 W', () => {
    const line = typed(
      'inLine',
      {
        delivery: 'incident',
        forwardScale: '20 W',
        forwardPercent: '5',
        reflectedScale: '20 W',
        reflectedPercent: '5',
      },
      [{ readings: '3 W', reflected: '0 W', nominal: '35' }],
      [],
    );
    const point = first(line);
    expect(worst(point)?.power).toMatch(/^2\.00? to 4\.00? W$/);
    expect(budgetLines('ascii', point.result)).toEqual([
      expect.objectContaining({
        label: 'The meter’s scale',
        stated: '+/-5 % of 20.0 W full scale',
        share: '100.0 %',
      }),
    ]);
  });

  it('shows nothing that could be stood behind below that', () => {
    const low = typed(
      'inLine',
      {
        delivery: 'incident',
        forwardScale: '20 W',
        forwardPercent: '5',
        reflectedScale: '20 W',
        reflectedPercent: '5',
      },
      [{ readings: '2.9 W', reflected: '0 W', nominal: '35' }],
      [],
    );
    expect(resultsOf(low).map(summarise)).toEqual([
      expect.stringMatching(/more than a third of the reading/),
    ]);
  });
});

describe('direct current in place of radio frequency', () => {
  it('gives 33.06 dBm +-0.09 dB', () => {
    const dc = typed(
      'dcSubstitution',
      { power: 'mean' },
      [{ readings: '14.2', riseDc: '14.0', volts: '10', amperes: '0.1995', nominal: '33' }],
      [
        { label: 'Rise with RF', unit: 'kelvinRf', amount: '0.1' },
        { label: 'Rise with DC', unit: 'kelvinDc', amount: '0.1' },
        { label: 'Volts', unit: 'percentOfDcVolts', amount: '0.5' },
        { label: 'Amperes', unit: 'percentOfDcAmperes', amount: '1' },
        { label: 'Leak', unit: 'percentOfPower', amount: '1' },
      ],
    );
    const point = first(dc);
    // 10 x 0.1995 x 14.2/14.0 = 2.0235 W; u = sqrt(0.407^2 + 0.412^2 + 0.289^2 + 2 x 0.577^2) % = 1.0419 % = 0.04525 dB, twice that 0.0905
    expect(summarise(point)).toContain('33.061 decibel-milliwatts plus or minus 0.090 decibels');
    expect(statedForms('ascii', point.result)[1]?.text).toContain('33.061(45) dBm');
  });
});

describe('four readings against 24 +-1 dBm with U = 0.5 dB', () => {
  const readings = ['24.10', '22.85', '22.20', '23.10'];
  const measured = typed(
    'padsIntoMeter',
    {},
    readings.map((reading) => ({ label: reading, readings: reading, nominal: '24', tolerance: '1' })),
    [{ label: 'Meter', kind: 'meter', form: 'expanded', amount: '0.5', factor: '2' }],
  );

  // Normal with 0.25 dB: (22.85 - 23)/0.25 = -0.6, 27.4 %; (22.20 - 23)/0.25 = -3.2, 0.07 %; (23.10 - 23)/0.25 = 0.4, 65.5 %.
  it('are inside, undecided, outside, undecided, each with its probability', () => {
    const points = numbered(measured);
    expect(points.map((point) => point.result.judgement.verdict)).toEqual([
      'inside',
      'cant-tell',
      'outside',
      'cant-tell',
    ]);
    expect(points.map((point) => conformityText('ascii', point))).toEqual([
      'more than 99.9 %',
      '27 %',
      'less than 0.1 %',
      '66 %',
    ]);
  });

  it('stand in one table, and are counted in one sentence', () => {
    const ordered = pointsInOrder('ascii', measured.points, resultsOf(measured));
    expect(pointsSummary(ordered)).toBe('Of the points 1 is inside, 1 is outside, 2 are undecided.');
    expect(pointRows('ascii', ordered)[1]).toMatchObject({
      label: '\u206822.85\u2069',
      estimate: '22.85 dBm',
      expanded: '+/-0.50 dB',
      verdict: 'can’t tell',
      probability: '27 %',
      dominant: 'Meter',
    });
  });

  it('would pass the last under simple acceptance, which has no third answer', () => {
    const simple = numbered({ ...measured, rule: { kind: 'simple' } });
    expect(simple.map((point) => verdictSentence(point))).toEqual([
      'Inside the specification',
      'Outside the specification',
      'Outside the specification',
      'Inside the specification',
    ]);
  });

  it('are told in a licence’s own words where its maximum is meant', () => {
    const licensed = typed(
      'padsIntoMeter',
      {},
      ['23.1', '24.1', '25'].map((reading) => ({
        specification: 'licence',
        highest: '24',
        readings: reading,
      })),
      [{ form: 'expanded', amount: '0.5', factor: '2' }],
    );
    const words = numbered(licensed).map((point) => verdictSentence(point));
    expect(words[0]).toMatch(/^Not shown to exceed the licence’s maximum, and shown to keep to it/);
    expect(words[1]).toMatch(/^Can’t tell: not shown to exceed the licence’s maximum, and not shown to keep/);
    expect(words[2]).toBe('Exceeds the licence’s maximum');
    expect(verdictReasons('ascii', first(licensed)).at(-1)).toMatch(/below its maximum less the uncertainty/);
  });
});
