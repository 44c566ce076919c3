import { describe, expect, it } from 'vitest';
import { levelDbm, powerW } from '#compute';
import { budgetLines, scatterStatement } from '../../src/bench/budget.ts';
import { cautionBasis, cautionWords } from '../../src/bench/caution-words.ts';
import { benchChain, MOST_RUNGS, uncertaintyAbove } from '../../src/bench/chain.ts';
import { resultAsText } from '../../src/bench/plain-text.ts';
import { drawnSpecification, reachOfChain } from '../../src/bench/reach.ts';
import { benchResult } from '../../src/bench/result.ts';
import {
  expandedWords,
  recordSentences,
  summarise,
  verdictReasons,
  verdictSentence,
} from '../../src/bench/result-words.ts';
import { waysOf, whyWaysDiffer } from '../../src/bench/ways.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { limits, linkOf } from '../../src/sheet/link.ts';
import type { Link, Sheet } from '../../src/sheet/sheet.ts';

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
    expect(result.improvement).toMatchObject({ link: { id: 'pad' } });
    expect(result.improvement?.share).toBeCloseTo((0.5 / Math.sqrt(3)) ** 2 / (clubU / 2) ** 2, 12);
    expect(result.improvement?.halvedDb).toBeCloseTo(2 * Math.hypot(...halved), 12);
    expect(result.improvement?.perfectDb).toBeCloseTo(2 * Math.hypot(...CLUB_PARTS_DB.with(4, 0)), 12);
  });

  it('lists each part with its divisor and its share, which add up to all of the variance', () => {
    const lines = budgetLines('ascii', result);
    expect(lines.map(({ divisor }) => divisor)).toEqual(['2', '2', '√3', '√2', '√3', '√3']);
    expect(lines.map(({ uncertainty }) => Number(uncertainty.replace(' dB', '')))).toEqual(
      CLUB_PARTS_DB.map((u) => Number(u.toFixed(4))),
    );
    expect(lines.reduce((sum, { share }) => sum + Number.parseFloat(share), 0)).toBeCloseTo(100, 0);
  });

  it('warns that the meter would be damaged without the pad, and reckons with the upper limit', () => {
    const words = cautionWords('ascii', { sheet: result.chain.sheet, cautions: result.cautions });
    // 28.5 dBm less 0.05 dB (coax at its least) is 28.45 dBm; the pad takes at least 19.5 dB of it: 8.95 dBm.
    expect(words.filter(({ exceeded }) => exceeded).map(({ key }) => key)).toEqual(['input-pad']);
    expect(words.map(({ text }) => text).join('\n')).toMatch(/gets 9\.0 dBm[^\n]*below the 20\.0 dBm/);
    expect(cautionBasis('ascii', result.chain.sheet, result.chain.result)).toContain('28.5 dBm (710 mW)');
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
    const guarded = benchResult(club({ ...near, rule: { kind: 'guardBand', multiplier: 1 } }));
    expect(verdictSentence(guarded)).toMatch(/^Can’t tell/);
    const simple = benchResult(club({ ...near, rule: { kind: 'simple' } }));
    expect(verdictSentence(simple)).toBe('Inside the specification');
    expect(verdictReasons('shown', simple).join(' ')).toContain('no “can’t tell”');
    expect(verdictSentence(benchResult(club({ readings: [levelDbm(10)] })))).toBe(
      'Outside the specification',
    );
  });

  it('has words of its own for a single limit', () => {
    const above = benchResult(club({ specification: { upper: 25 } }));
    expect(verdictSentence(above)).toMatch(/exceeds the limit/i);
    const unsure = benchResult(
      club({ specification: { upper: 27 }, rule: { kind: 'guardBand', multiplier: 1 } }),
    );
    expect(verdictSentence(unsure)).toMatch(/not shown to exceed/);
  });

  it('says that the method falls short, and what it would take, where nothing could be inside', () => {
    const narrow = benchResult(
      club({ specification: { lower: 26.8, upper: 27.4 }, rule: { kind: 'guardBand', multiplier: 1 } }),
    );
    expect(verdictReasons('ascii', narrow).join(' ')).toContain('+/-0.30 dB');
  });
});

it('takes a larger coverage factor where few readings are all that is known', () => {
  const { chain } = benchResult(club({ links: [], readings: [levelDbm(7), levelDbm(7.1), levelDbm(6.9)] }));
  // t for 95.45 % and 2 degrees of freedom is 4.53 (GUM, table G.2); s = 0.1, so U = 4.527 x 0.1 / sqrt 3.
  expect(chain.result.propagation.coverageFactor).toBeCloseTo(4.53, 2);
  expect(chain.result.propagation.expanded).toBeCloseTo((4.5266 * 0.1) / Math.sqrt(3), 4);
  expect(expandedWords('ascii', chain)).toContain('k = 4.53, 95.45 %');
});

describe('readings', () => {
  const readings = [levelDbm(7), levelDbm(7.2), levelDbm(6.9), levelDbm(7.1)];

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
    expect(recordSentences('ascii', club({ readings })).join(' ')).toContain(
      '7.00, 7.20, 6.90, 7.10; mean 7.05 dBm',
    );
    const many = Array.from({ length: 13 }, (_, index) => levelDbm(7 + index / 100));
    expect(recordSentences('ascii', club({ readings: many })).join(' ')).toContain(
      '13 readings, mean 7.06 dBm',
    );
  });

  it('of one alone say that nothing is known of its scatter, unless it is known from earlier', () => {
    expect(recordSentences('ascii', club()).join(' ')).toContain('tells nothing of its own scatter');
    const known = club({ repeatability: { standardDeviationDb: 0.05, degreesOfFreedom: 9 } });
    expect(recordSentences('ascii', known).join(' ')).not.toContain('tells nothing');
    expect(scatterStatement(known)).toEqual({
      form: 'standard',
      standardUncertainty: 0.05,
      degreesOfFreedom: 9,
    });
  });
});

describe('three ways to add up', () => {
  it('stand side by side, with the parts that have no limit named', () => {
    const ways = waysOf('ascii', benchResult(club()));
    expect(ways.map(({ name }) => name)).toEqual(['Worst case', 'Propagation', 'Whole distribution']);
    expect(ways[0]?.says).toContain('National standard, Calibration laboratory');
    expect(ways[1]?.level).toBe('26.41 to 27.79 dBm'); // 27.1 -+ 0.6893
  });

  it('differ for a reason that is told', () => {
    const flat = club({ links: pads(1) });
    expect(whyWaysDiffer('ascii', benchResult(flat))).toContain('narrower than propagation');
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
    expect(uncertaintyAbove(sheet, 'p0')).toBe(0);
    expect(uncertaintyAbove(sheet, 'p2')).toBeCloseTo(Math.hypot(0.1, 0.11) / Math.sqrt(3), 12);
    expect(uncertaintyAbove(sheet, 'nobody')).toBe(0);
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

describe('the result as text', () => {
  const text = resultAsText(benchResult(club()), 'https://example.org/bench/#v=1');

  it('is plain ASCII of at most 72 columns, with all that another person needs to check it', () => {
    expect(text).toMatch(/^[ -~\n]*$/);
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(72);
    for (const part of [
      '27.10 dBm +/-0.69 dB',
      'k = 2',
      'Reading 7.0 dBm',
      '20 dB pad +/-0.5 dB',
      'guard band',
      '438 to 601',
      'Without 20 dB pad',
    ])
      expect(text.replace(/\n {2}/g, ' ')).toContain(part);
  });

  it('ends with the address that opens the same sheet', () => {
    expect(text.split('\n').at(-1)).toBe('<https://example.org/bench/#v=1>');
    expect(resultAsText(benchResult(club()), undefined)).not.toContain('<');
  });
});

it('is spoken as one settled sentence', () => {
  expect(summarise(benchResult(club()))).toBe(
    '27.10 dBm plus or minus 0.69 decibels, 513 milliwatts, 438 to 601. Inside the specification.',
  );
});
