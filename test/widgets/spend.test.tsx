import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { LineBand } from '../../src/figures/LineBand.tsx';
import { clubSpending, SPENDABLE } from '../../src/sheet/spend.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { BoughtTable } from '../../src/widgets/spend/BoughtTable.tsx';
import { figureOf } from '../../src/widgets/spend/figure.ts';
import {
  fieldOf,
  type SpendFields,
  type SpendState,
  spendingOf,
  spendSpec,
} from '../../src/widgets/spend/spec.ts';
import { strings } from '../../src/widgets/spend/strings.ts';
import { answersOf, boughtRows, noteOf, summarise } from '../../src/widgets/spend/words.ts';
import { anyState } from '../address/any-state.ts';
import { drawnTexts, letterSize, outsideOf, touching } from '../figures/drawn-text.ts';

const { fields } = spendSpec;
const club: SpendState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<SpendFields>(club);
const reduce = reduceFields<SpendFields>(fields);
const action: fc.Arbitrary<FieldsAction<SpendFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: 0, max: 40 }), fc.constantFrom(...SPENDABLE, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: club } as const),
);

describe('the chain under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers, the strip within the axis', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, limit = 0, at, domain } = figureOf(state);
        expect(limit).toBeLessThanOrEqual(span);
        if (!state.held) for (const { upper } of band) expect(upper).toBeLessThanOrEqual(span);
        expect(at.x >= domain.lower && at.x <= domain.upper).toBe(true);
        const said = [
          summarise(state.values),
          noteOf(state.values),
          ...answersOf(state.values).flatMap(Object.values),
          ...boughtRows(state.values).flatMap(({ cells }) => cells),
        ].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'pad', value: 0 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the chain', () => {
  it('has a specification free of faults, units that its kinds have, and words for every code', () => {
    expect(specFaults(spendSpec)).toEqual([]);
    for (const name of ['level', 'meter', 'mismatch', 'pad', 'coax', 'scatter', 'count'] as const)
      expect(kindOf(fields[name].kind).base, name).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.link)).toEqual([...SPENDABLE]);
    expect(Object.keys(strings.settings.choices.link)).toEqual(Object.keys(fields.link.choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(spendSpec, encode(spendSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s chain', () => expect(spendingOf(club)).toEqual(clubSpending()));
});

describe('the figure', () => {
  it('has the strip fall with the number of readings and rise with the limits of a link', () => {
    const uppers = (link: SpendState['link']) =>
      figureOf(fieldsState<SpendFields>({ ...club, link })).band.map(({ upper }) => upper);
    for (const link of SPENDABLE) {
      const values = uppers(link);
      const sorted = values.toSorted((a, b) => (link === 'readings' ? b - a : a - b));
      expect(values).toEqual(sorted);
    }
  });

  it('names the limit where its strip is narrow', () => {
    const named = (link: SpendState['link']) =>
      figureOf(fieldsState<SpendFields>({ ...club, link })).limitNamed;
    expect(SPENDABLE.map(named)).toEqual(['start', 'start', 'start', 'start', 'end']);
    const markup = render(
      <LineBand
        frame="wide"
        {...figureOf(start)}
        words={{ up: 'u', along: 'a', limit: 'room' }}
        name="n"
        description="d"
      />,
    );
    expect(markup).toMatch(/<text x="64" y="[\d.]+" class="plot-cased">room<\/text>/);
  });

  it('moves the field of the link that is looked at', () => {
    expect(SPENDABLE.map(fieldOf)).toEqual(['meter', 'mismatch', 'pad', 'coax', 'count']);
    for (const link of SPENDABLE) {
      const state = { ...club, link };
      expect(figureOf(fieldsState<SpendFields>(state)).at.x).toBe(state[fieldOf(link)]);
    }
  });

  it('shows the strip as it was where another link was changed, and only there', () => {
    const changed = (name: string, value: number) => figureOf(reduce(start, { type: 'set', name, value }));
    expect(changed('meter', 0.1).ghost).toBeDefined();
    expect(changed('pad', 0.1).ghost).toBeUndefined();
    expect(changed('level', 27).ghost).toBeUndefined();
  });

  it.each(['wide', 'narrow', 'stage'] as const)('writes nothing into anything else, %s', (frame) => {
    const rule = { wide: '.plot text', narrow: '.plot-narrow text', stage: '.plot-stage text' }[frame];
    for (const link of SPENDABLE)
      for (const level of [26, 27.9, 28.45]) {
        const figure = figureOf(fieldsState<SpendFields>({ ...club, link, level }));
        const words = { up: strings.up, along: strings.along[link], limit: strings.limit };
        const markup = render(
          <LineBand frame={frame} {...figure} words={words} name="a" description="b" handle />,
        );
        const texts = drawnTexts(markup, { size: letterSize(rule) });
        expect(texts.length).toBeGreaterThan(4);
        expect(touching(texts)).toEqual([]);
        expect(outsideOf(markup, texts, 1)).toEqual([]);
      }
  });
});

describe('the answers', () => {
  it('give the verdict with what it takes, what decides, and the cheapest change', () => {
    const [verdict, dominant, cheapest] = answersOf(club);
    expect(verdict.figure).toBe(`Can’t tell: ±0.71${nb}dB`);
    expect(verdict.words).toContain(`±0.60${nb}dB or less`);
    expect(dominant.figure).toBe('The pad');
    expect(dominant.words).toContain(`67${nb}%`);
    expect(cheapest.figure).toBe(`The pad at ±0.38${nb}dB`);
  });

  it('say when there is nothing to buy, and when nothing on the list will do', () => {
    expect(answersOf({ ...club, level: 27 })[2].figure).toBe('Nothing to buy');
    expect(answersOf({ ...club, pad: 0.1 })[0].figure).toMatch(/^Inside/);
    expect(answersOf({ ...club, level: 28.3 })[2].figure).toBe('No single link will do');
  });

  it('name what lies above where nothing else is left', () => {
    const bare = { ...club, meter: 0, mismatch: 0, pad: 0, coax: 0, scatter: 0.01, count: 30 };
    const [verdict, others] = answersOf(bare);
    expect(verdict.figure).toMatch(/^Inside/);
    expect(others.figure).toBe(strings.others);
    expect(others.words).toMatch(/^brings (9\d|100)\u00a0% of the variance, and nothing can be spent on it$/);
    const [, level] = answersOf({ ...club, meter: 0.5 });
    expect(level.figure).toBe(`${strings.link.meter} and ${strings.link.pad}`);
    expect(level.words).toMatch(/^bring \d+\u00a0% of the variance each; if one were perfect, /);
  });

  it('give limits that do earn the verdict, rounded down, and whole numbers of readings', () => {
    const rows = boughtRows({ ...club, level: 27.85 });
    expect(rows.map(({ cells }) => cells[2])).toEqual([
      `at ±0.07${nb}dB`,
      'never',
      `at ±0.44${nb}dB`,
      'never',
      'never',
    ]);
    const scattered = { ...club, scatter: 0.5, count: 1, level: 27.5 };
    const [, , , , readings] = boughtRows(scattered).map(({ cells }) => cells[2] ?? '');
    const count = Number(/n = (\d+)/.exec(readings ?? '')?.[1]);
    expect(answersOf({ ...scattered, count })[0].figure).toMatch(/^Inside/);
    expect(answersOf({ ...scattered, count: count - 1 })[0].figure).toMatch(/^Can’t tell/);
  });

  it('say how many readings pay', () => {
    expect(noteOf(club)).toContain('readings pay up to 2');
    expect(noteOf(club)).toContain(`bring another ±0.06${nb}dB (k = 2)`);
    expect(noteOf({ ...club, scatter: 0.01 })).toContain('a second reading no longer pays');
  });

  it('speak in words without signs', () => {
    expect(summarise(club)).toMatch(/^Can’t tell: plus or minus 0\.71 decibels\. The pad brings 67 percent/);
    expect(summarise(club)).toMatch(
      /The pad at plus or minus 0\.38 decibels: the cheapest single change that earns a verdict \(hours: 1\)\.$/,
    );
  });
});

describe('the table', () => {
  it('has a row for each link, the one looked at marked', () => {
    const markup = render(<BoughtTable state={{ ...club, link: 'readings' }} />);
    expect([...markup.matchAll(/<th scope="row">/g)]).toHaveLength(SPENDABLE.length);
    expect(markup).toMatch(/<tr class="looked-at"><th scope="row">More readings/);
  });
});
