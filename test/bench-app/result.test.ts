import { describe, expect, it } from 'vitest';
import { levelDbm, powerW } from '#compute';
import { MOST_RUNGS } from '../../src/bench/results/chain.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { drawnSpecification, reachOfChain } from '../../src/bench/results/reach.ts';
import { uncertaintyAbove } from '../../src/bench/state/pull.ts';
import { budgetLines } from '../../src/bench/words/budget.ts';
import { cautionsAt, cautionsElsewhere } from '../../src/bench/words/caution-elsewhere.ts';
import { cautionBasis, cautionWords } from '../../src/bench/words/caution-words.ts';
import { recordSentences } from '../../src/bench/words/measured-words.ts';
import { outlierWords } from '../../src/bench/words/outlier-words.ts';
import { expandedWords, improvementWords, summarise } from '../../src/bench/words/result-words.ts';
import { robustnessWords } from '../../src/bench/words/robustness-words.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import { verdictReasons, verdictSentence } from '../../src/bench/words/verdict-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/words/ways.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { limits, linkOf, uShaped } from '../../src/sheet/link.ts';
import type { Link, Sheet } from '../../src/sheet/sheet.ts';
import { toModel } from '../../src/sheet/to-model.ts';
import { benchChain, benchResult } from './bench-result.ts';

/** GUM 4.3.7 (rectangular a/sqrt 3), F.1.3.5 (U-shaped a/sqrt 2), 4.3.3 (U/k), added as squares (5.1.2). */
const CLUB_PARTS_DB = [
  0.02 / 2,
  0.06 / 2,
  0.25 / Math.sqrt(3),
  0.16 / Math.SQRT2,
  0.5 / Math.sqrt(3),
  0.05 / Math.sqrt(3),
];
const clubU = 2 * Math.hypot(...CLUB_PARTS_DB);

const club = (change: Partial<Sheet> = {}): Sheet => ({ ...clubSheet(), ...change });
const shownOf = (sheet: Sheet) => {
  const shown = pointResult(measurementOf(sheet), 'point1');
  if (!shown.inRange) throw new Error(`shownOf: wish a number, got ${shown.reason.code}`);
  return shown;
};
const pads = (count: number): readonly Link[] =>
  Array.from({ length: count }, (_, index) =>
    linkOf({
      id: `p${index}`,
      label: `Pad ${index}`,
      kind: 'pad',
      lossDb: 1,
      statement: limits(0.1 + index / 100),
      source: 'specification',
    }),
  );

describe('the demonstration transmitter', () => {
  const result = benchResult(club());

  it('gives the level and uncertainty that the sum of squares gives by hand', () => {
    expect(result.chain.result.estimate).toBeCloseTo(7 + 20 + 0.1, 12);
    expect(result.chain.result.propagation.expanded).toBeCloseTo(clubU, 12);
  });

  it('names the pad as what widens the band most, and what half of it and none of it would leave', () => {
    const halved = CLUB_PARTS_DB.with(4, 0.25 / Math.sqrt(3));
    expect(result.improvement).toMatchObject({
      id: 'pad',
      labels: ['20 dB pad'],
      link: { id: 'pad' },
      others: 0,
    });
    expect(result.improvement?.share).toBeCloseTo((0.5 / Math.sqrt(3)) ** 2 / (clubU / 2) ** 2, 12);
    expect(result.improvement?.halvedDb).toBeCloseTo(2 * Math.hypot(...halved), 12);
    expect(result.improvement?.perfectDb).toBeCloseTo(2 * Math.hypot(...CLUB_PARTS_DB.with(4, 0)), 12);
  });

  it('names both where two are level, and what one of them would leave', () => {
    const links = clubSheet().links.map((link) =>
      link.id === 'meter' ? { ...link, statement: limits(0.5) } : link,
    );
    const level = benchResult(club({ links }));
    expect(level.improvement?.labels).toEqual(['The meter that was lent', '20 dB pad']);
    expect(improvementWords('ascii', level)).toMatch(
      /^4\d % of the variance each\. One of them half as wrong/,
    );
  });

  it('improves what shares a cause together, since one cannot be had without the other', () => {
    const links = clubSheet().links.map((link) =>
      link.id === 'pad' || link.id === 'meter' ? { ...link, cause: 'one evening' } : link,
    );
    const { improvement } = benchResult(club({ links }));
    const rest = 2 * Math.hypot(...CLUB_PARTS_DB.filter((_, index) => index !== 2 && index !== 4));
    expect(improvement?.others).toBe(1);
    expect(improvement?.perfectDb).toBeCloseTo(rest, 12);
    expect(improvementWords('ascii', benchResult(club({ links })))).toContain('shares its cause');
  });

  it('lists each part with its divisor and its share, which add up to all of the variance', () => {
    const lines = budgetLines('ascii', result);
    expect(lines.map(({ divisor }) => divisor)).toEqual(['2', '2', '√3', '√2', '√3', '√3']);
    expect(lines.map(({ uncertainty }) => Number(uncertainty.replace(' dB', '')))).toEqual(
      CLUB_PARTS_DB.map((u) => Number(u.toFixed(4))),
    );
    expect(lines.reduce((sum, { shareOf }) => sum + shareOf, 0)).toBeCloseTo(1, 12);
  });

  it('warns that the meter would be damaged without the pad, and reckons with the upper limit', () => {
    const { sheet } = result.chain;
    const words = cautionWords('ascii', { sheet, cautions: result.cautions });
    // 28.5 dBm less 0.05 dB (coax at its least) is 28.45 dBm; the pad takes at least 19.5 dB of it: 8.95 dBm.
    expect(words.filter(({ exceeded }) => exceeded).map(({ key }) => key)).toEqual(['inputLevel-pad']);
    expect(words.map(({ text }) => text).join('\n')).toMatch(/gets 9\.0 dBm[^\n]*below the 20\.0 dBm/);
    expect(cautionBasis('ascii', result.upper)).toContain('28.5 dBm (710 mW)');
  });
});

describe('the power that cautions reckon with', () => {
  it('is the mean for heat and the peak for the input: 28.5 dBm PEP keyed with PARIS are 311 mW of heat at most', () => {
    const keyed = club({
      measurand: { ...clubSheet().measurand, power: 'peakEnvelope', keying: 'parisWord' },
      readings: [levelDbm(3)],
    });
    const { upper } = benchResult(keyed);
    // 707.9 mW x 22/50 = 311.5 mW
    expect(upper.peakEnvelope).toBeCloseTo(0.70795, 4);
    expect(upper.mean).toBeCloseTo(0.3115, 4);
    expect(cautionBasis('ascii', upper)).toMatch(/peak envelope power of 710 mW .* mean power of 310 mW/);
  });

  it('of a mean turns into the peak that it stands for', () => {
    const keyed = club({
      measurand: { ...clubSheet().measurand, power: 'mean', keying: 'twoEqualTones' },
    });
    const { upper } = benchResult(keyed);
    expect(upper.peakEnvelope / upper.mean).toBeCloseTo(2, 12);
  });

  it('is that of another point where it passes a limit there and not here', () => {
    const quiet = shownOf(club({ specification: { upper: 10 }, readings: [levelDbm(-20)] }));
    const loud = shownOf(club({ specification: { upper: 45 }, readings: [levelDbm(7)] }));
    const words = cautionsElsewhere('ascii', quiet, [{ label: '145 MHz', result: loud }]);
    expect(words.map(({ text }) => text).join('\n')).toMatch(/^145 MHz: 20 dB pad: gets 31 W/);
    expect(cautionsElsewhere('ascii', loud, [{ label: 'again', result: loud }])).toEqual([]);
    expect(cautionsAt(loud)).toBe(loud.result.cautions);
  });
});

describe('the heat in a pad', () => {
  const rated = (power: number | undefined) => {
    const sheet = club();
    const links = sheet.links.map((link) => {
      const { ratedPowerW: _rating, ...rest } = link;
      return link.id === 'pad' && power !== undefined ? { ...rest, ratedPowerW: powerW(power) } : rest;
    });
    const { chain, cautions } = benchResult({ ...sheet, links });
    return cautionWords('ascii', { sheet: chain.sheet, cautions }).find(({ key }) => key === 'heat-pad');
  };

  it('is compared with its rating: 708 mW at the upper limit are too much for half a watt', () => {
    expect(rated(0.5)).toMatchObject({ exceeded: true, text: expect.stringContaining('500 mW only') });
    expect(rated(1)).toMatchObject({ exceeded: false });
  });

  it('is told also where no rating was entered', () => {
    expect(rated(undefined)).toMatchObject({
      exceeded: false,
      text: expect.stringContaining('enter its rating'),
    });
  });
});

describe('the verdict', () => {
  it('is by its rule: the guard band leaves a zone where it cannot tell, simple acceptance none', () => {
    const near = { readings: [levelDbm(8)] }; // 28.1 dBm, 0.4 dB inside the limit, with U = 0.69 dB
    const guarded = shownOf(club({ ...near, rule: { kind: 'guardBand', multiplier: 1 } }));
    expect(verdictSentence(guarded)).toMatch(/^Can’t tell/);
    const simple = shownOf(club({ ...near, rule: { kind: 'simple' } }));
    expect(verdictSentence(simple)).toBe('Inside the specification');
    expect(verdictReasons('shown', simple).join(' ')).toContain('no “can’t tell”');
    expect(verdictSentence(shownOf(club({ readings: [levelDbm(10)] })))).toBe('Outside the specification');
  });

  it('has words of its own for a single limit', () => {
    expect(verdictSentence(shownOf(club({ specification: { upper: 25 } })))).toMatch(/exceeds the limit/i);
    expect(verdictSentence(shownOf(club({ specification: { upper: 27 } })))).toMatch(/not shown to exceed/);
  });

  it('says that the method falls short, and what it would take, where nothing could be inside', () => {
    const narrow = shownOf(club({ specification: { lower: 26.8, upper: 27.4 } }));
    expect(verdictReasons('ascii', narrow).join(' ')).toContain('+/-0.30 dB');
  });

  it('names the required probability as it was asked for', () => {
    const rule = { kind: 'probability', required: 0.975 } as const;
    expect(verdictReasons('ascii', shownOf(club({ rule }))).join(' ')).toContain('at least 97.5 % probable');
  });

  it('stands or hangs on the choice of shapes, and the table says which', () => {
    const steady = robustnessWords('ascii', benchResult(club()));
    expect(steady.lines.map(({ taken }) => taken)).toEqual([
      'as stated',
      'all plain limits rectangular',
      'all plain limits triangular',
      'all plain limits U-shaped',
      'coverage factor 2',
      'coverage factor 3',
    ]);
    expect(steady).toMatchObject({ steady: true, says: expect.stringContaining('the same under each') });
    // 0.70 dB inside the limit: just inside with rectangles (0.65), not so with U shapes (0.76) or k = 3 (0.84).
    const shaky = robustnessWords('ascii', benchResult(club({ readings: [levelDbm(7.7)] })));
    expect(shaky.lines.map(({ verdict }) => verdict)).toEqual([
      'inside',
      'inside',
      'inside',
      'can’t tell',
      'inside',
      'can’t tell',
    ]);
    expect(shaky.says).toContain('hangs on the choice');
  });
});

describe('the stated result', () => {
  it('comes in the forms of the Guide, numbers cut to the place that the uncertainty bears', () => {
    const texts = statedForms('ascii', benchResult(club())).map(({ text }) => text);
    // u = 0.3447 dB; 10^2.71 = 512.9 mW, 437.6 mW and 601.1 mW at the ends
    expect(texts[0]).toMatch(/^27\.10 dBm with .* 0\.34 dB$/);
    expect(texts[1]).toContain('27.10(34) dBm');
    expect(texts[2]).toContain('27.10(0.34) dBm');
    expect(texts[3]).toMatch(/^27\.10 dBm \+\/-0\.69 dB, .* u = 0\.34 dB \(k = 2, 95\.45 %\)/);
    expect(texts[4]).toBe('513 mW, +88/-75 mW (438 to 601 mW; k = 2, 95.45 %)');
    expect(texts[5]).toContain('26.45 to 27.75 dBm');
  });

  it('never has one plus-minus in watts, not even where both sides round to the same', () => {
    const tight = club({
      links: [linkOf({ id: 'a', label: 'A', kind: 'meter', statement: limits(0.001), source: 'judged' })],
    });
    const watts = statedForms('ascii', benchResult(tight)).find(({ key }) => key === 'watts');
    expect(watts?.text).toMatch(/\+0\.0013\/-0\.0013 mW|\+1\.3\/-1\.3/);
    expect(watts?.text).not.toContain('+/-');
  });

  it('names Student’s t and the degrees of freedom where few readings count', () => {
    const few = club({ links: [], readings: [levelDbm(7), levelDbm(7.1), levelDbm(6.9)] });
    expect(statedForms('ascii', benchResult(few)).find(({ key }) => key === 'expanded')?.text).toContain(
      'k = 4.53, 95.45 %, Student’s t with 2 effective degrees of freedom',
    );
  });

  it('says so where nothing is uncertain', () => {
    expect(statedForms('ascii', benchResult(club({ links: [] })))).toEqual([
      expect.objectContaining({ text: '7.00 dBm; no uncertainty is stated' }),
    ]);
  });
});

it('takes a larger coverage factor where few readings are all that is known', () => {
  const result = benchResult(club({ links: [], readings: [levelDbm(7), levelDbm(7.1), levelDbm(6.9)] }));
  // t for 95.45 % and 2 degrees of freedom is 4.53 (GUM, table G.2); s = 0.1, so U = 4.527 x 0.1 / sqrt 3.
  expect(result.chain.result.propagation.coverageFactor).toBeCloseTo(4.53, 2);
  expect(result.chain.result.propagation.expanded).toBeCloseTo((4.5266 * 0.1) / Math.sqrt(3), 4);
  expect(expandedWords('ascii', result)).toContain('k = 4.53, 95.45 %');
});

it('says that U covers about 95 % only where the sum is near enough to a bell', () => {
  const says = (change: Partial<Sheet>): string => expandedWords('ascii', benchResult(club(change)));
  expect(says({})).toContain('covers about 95 %');
  // One pad alone is even between its limits: 2 u = 1.15 times the limit holds all of it.
  expect(says({ links: pads(1) })).toContain('ends sooner, so that it covers more');
  // Two readings, their scatter known from one degree of freedom, beside limits of 0.1 dB.
  const two = { links: pads(1), readings: [levelDbm(7), levelDbm(7.1)] };
  expect(says(two)).toContain('longer tails, so that it covers less');
});

describe('readings', () => {
  const readings = [levelDbm(7), levelDbm(7.2), levelDbm(6.9), levelDbm(7.1)];
  const sentences = (change: Partial<Sheet>) => recordSentences('ascii', shownOf(club(change))).join(' ');

  it('scatter as a part of their own, s over the root of n', () => {
    const line = budgetLines('ascii', benchResult(club({ readings }))).at(-1);
    // s of 7.0, 7.2, 6.9, 7.1 about 7.05: sqrt((0.0025 + 0.0225 + 0.0225 + 0.0025) / 3) = 0.12910; over 2 = 0.06455
    expect(line).toMatchObject({
      label: 'Scatter of the readings',
      uncertainty: '0.0645 dB',
      divisor: '√4',
      freedom: '3',
    });
  });

  it('are all told in the record, and only counted where they are many', () => {
    expect(sentences({ readings })).toContain(
      'Reading 7.0, 7.2, 6.9, 7.1; mean 7.05 dBm, standard deviation 0.13 dB.',
    );
    const many = Array.from({ length: 13 }, (_, index) => levelDbm(7 + index / 100));
    expect(sentences({ readings: many })).toContain('13 readings from 7 dBm to 7.12 dBm, mean 7.06 dBm');
  });

  it('of one alone say that nothing is known of its scatter, unless it is known from earlier', () => {
    expect(sentences({})).toContain('tells nothing of its own scatter');
    const known = { repeatability: { standardDeviationDb: 0.05, degreesOfFreedom: 9 } };
    expect(sentences(known)).not.toContain('tells nothing');
    expect(budgetLines('ascii', benchResult(club(known))).at(-1)).toMatchObject({
      stated: 'u 0.05 dB',
      uncertainty: '0.0500 dB',
      freedom: '9',
    });
  });

  it('that stand off are pointed at, and stay', () => {
    const odd = [7, 7.02, 6.98, 7.01, 7.6].map(levelDbm);
    const sheet = club({ readings: odd });
    // Mean 7.122, s 0.2677: (7.6 - 7.122)/0.2677 = 1.79; Grubbs' limit for five readings at 5 % on both sides is 1.715.
    const [sentence, ...more] = outlierWords('ascii', sheet);
    expect(sentence).toMatch(
      /^Reading 5, 7\.6 dBm, stands 1\.79 .* all 5, where 1\.7[12] .* Nothing is removed/,
    );
    expect(more).toEqual([]);
    expect(shownOf(sheet).sheet.readings).toEqual(odd);
    expect(outlierWords('ascii', club({ readings }))).toEqual([]);
    expect(outlierWords('ascii', club({ readings: odd.slice(3) }))).toEqual([]);
  });
});

/** Two parts that are most often near their ends: U is 2 sqrt(2) 0.3 / sqrt(2) = 0.6, which is what they reach together. */
const twoEnds = (): readonly Link[] => pads(2).map((link) => ({ ...link, statement: uShaped(0.3) }));

describe('three ways to add up', () => {
  it('stand side by side, with the parts that have no limit named', () => {
    const ways = waysOf('ascii', benchResult(club()));
    expect(ways.map(({ name }) => name)).toEqual(['Worst case', 'Propagation', 'Whole distribution']);
    expect(ways[0]?.says).toContain('National standard, Calibration laboratory');
    expect(ways[1]?.level).toBe('26.41 to 27.79 dBm'); // 27.1 -+ 0.6893
  });

  it('differ for a reason that is told', () => {
    const flat = club({ links: pads(1) });
    expect(whyWaysDiffer('ascii', benchResult(flat))).toMatch(
      /^The worst case is narrower than propagation here, .* bell, which reaches beyond the limits\./,
    );
    // 0.1 dB of limits, and a certificate that has none: 2 sqrt(0.1^2/3 + 0.03^2) = 0.13 dB.
    const certified = [...pads(1), ...clubSheet().links.filter(({ id }) => id === 'laboratory')];
    expect(whyWaysDiffer('ascii', benchResult(club({ links: certified })))).toMatch(
      /^The worst case is narrower than propagation here, since parts without a limit have no end to add\./,
    );
    expect(whyWaysDiffer('ascii', benchResult(club({ links: twoEnds() })))).toMatch(
      /^The worst case is no wider than propagation here: few parts count, .* as far as their ends\./,
    );
    // 0.5 + 0.3 = 0.8 of limits, and 2 sqrt(0.5^2/3 + 0.3^2/3 + 0.215^2) = 0.8 with a certificate that has none
    const open = { form: 'expanded', expanded: 0.43, coverageFactor: 2 } as const;
    const stated = [limits(0.5), limits(0.3), open];
    const beside = pads(3).map((link, index) => ({ ...link, statement: stated[index] ?? open }));
    expect(whyWaysDiffer('ascii', benchResult(club({ links: beside })))).toMatch(
      /^The worst case is no wider than propagation here, since parts without a limit/,
    );
    const many = whyWaysDiffer('ascii', benchResult(club({ links: pads(40) })));
    expect(many).toMatch(/times as wide/);
    expect(many).toContain('close to a bell');
    const [padOnly] = clubSheet().links.filter(({ id }) => id === 'pad');
    const few = club({ links: padOnly ? [padOnly] : [], readings: [levelDbm(7), levelDbm(7.2)] });
    expect(whyWaysDiffer('ascii', benchResult(few))).toContain('long tails');
    const scatterOnly = club({ links: [], readings: [levelDbm(7), levelDbm(7.2)] });
    expect(whyWaysDiffer('ascii', benchResult(scatterOnly))).toContain('one part makes up nearly all');
    expect(whyWaysDiffer('ascii', benchResult(club({ links: [] })))).toContain('bare reading');
  });
});

describe('a long chain', () => {
  const sheet = club({ links: pads(30) });
  const chain = benchChain(sheet);

  it('draws the widest rungs in their order and counts the others in', () => {
    expect(chain.rungs.map(({ id }) => id)).toEqual(
      Array.from({ length: MOST_RUNGS }, (_, index) => `p${30 - MOST_RUNGS + index}`),
    );
    expect(chain.undrawn).toBe(30 - MOST_RUNGS);
    expect(chain.rungs.at(-1)?.cumulative.propagation.expanded).toBeCloseTo(
      chain.result.propagation.expanded,
      12,
    );
  });

  it('of twelve parts is drawn whole', () => {
    expect(benchChain(club({ links: pads(MOST_RUNGS) }))).toMatchObject({ undrawn: 0 });
  });

  it('knows what stands above each link', () => {
    const model = toModel(sheet);
    expect(uncertaintyAbove(model, 'p0')).toBe(0);
    expect(uncertaintyAbove(model, 'p2')).toBeCloseTo(Math.hypot(0.1, 0.11) / Math.sqrt(3), 12);
    expect(uncertaintyAbove(model, 'nobody')).toBe(0);
  });
});

describe('the reach of the figure', () => {
  it('holds the worst case and the limits of the specification', () => {
    const chain = benchChain(club());
    expect(drawnSpecification(chain)).toEqual({ lower: 25.5, upper: 28.5 });
    expect(reachOfChain(chain)).toBeCloseTo(27.1 - 25.5, 9);
  });

  it('leaves out a limit that lies too far away to be drawn beside the band', () => {
    const chain = benchChain(club({ specification: { lower: -40, upper: 28.5 } }));
    expect(drawnSpecification(chain)).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 28.5 });
  });
});

it('is spoken as one settled sentence', () => {
  expect(summarise(shownOf(club()))).toBe(
    '27.10 decibel-milliwatts plus or minus 0.69 decibels, 513 milliwatts, 438 to 601. Inside the specification.',
  );
});

it('has no result for a point that is not there', () => {
  expect(() => pointResult(measurementOf(club()), 'nobody')).toThrow(/pointResult: point must be one/);
});
