import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { clubHeld } from '../../src/sheet/conformity.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/verdict/figure.ts';
import { domainOf, formOf, shownFields } from '../../src/widgets/verdict/item.ts';
import { RiskTable } from '../../src/widgets/verdict/RiskTable.tsx';
import { shareText } from '../../src/widgets/verdict/share-text.ts';
import {
  heldOf,
  type Item,
  ruleOf,
  type VerdictFields,
  type VerdictState,
  verdictSpec,
} from '../../src/widgets/verdict/spec.ts';
import { strings } from '../../src/widgets/verdict/strings.ts';
import { acceptedText, answersOf, riskNote, riskRows, summarise } from '../../src/widgets/verdict/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = verdictSpec;
const club: VerdictState = defaultState(fields);
const nb = '\u00a0';
const ITEMS: readonly Item[] = ['transmitter', 'diode', 'container', 'resistors'];
const start = fieldsState<VerdictFields>(club);
const reduce = reduceFields<VerdictFields>(fields);
const action: fc.Arbitrary<FieldsAction<VerdictFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -10, max: 2000 }),
      fc.constantFrom(...ITEMS, 'simple', 'probability', 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: club } as const),
);

describe('the bands under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { estimate, expanded, domain } = figureOf(state);
        expect(estimate).toBeGreaterThanOrEqual(domain.lower);
        expect(estimate).toBeLessThanOrEqual(domain.upper);
        expect(expanded).toBeGreaterThan(0);
        const said = [
          summarise(state.values),
          ...answersOf(state.values).flatMap(Object.values),
          ...riskRows(state.values).flatMap(({ name, cells }) => [name, ...cells]),
          riskNote(state.values) ?? '',
        ].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the address of the bands', () => {
  it('has a specification free of faults, units that its kinds have, and words for every code', () => {
    expect(specFaults(verdictSpec)).toEqual([]);
    for (const [name, field] of Object.entries(fields))
      if (field.type === 'number')
        expect(kindOf(field.kind).base, name).toBe(
          strings.settings.units[name as keyof typeof strings.settings.units],
        );
      else
        expect(Object.keys(strings.settings.choices[name as 'item' | 'rule'])).toEqual(
          Object.keys(field.choices),
        );
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(verdictSpec, encode(verdictSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s reading, its U that of the chain down to the socket', () => {
    expect(heldOf(club)).toEqual(clubHeld());
    const { expanded } = bandChainOf(clubSheet()).result.propagation;
    expect(club.expanded).toBe(Number(expanded.toFixed(2)));
  });

  it('keeps the axis still: its ends are what can be read', () => {
    for (const item of ITEMS) {
      const { min, max } = fields[formOf(item).reading];
      expect(domainOf(item)).toEqual({ lower: min, upper: max });
    }
  });
});

describe('what can be set', () => {
  it('is the rule with its one number, and the fields of what is measured', () => {
    expect(shownFields(club)).toEqual([
      'reading',
      'rule',
      'multiplier',
      'expanded',
      'lower',
      'upper',
      'spread',
      'item',
    ]);
    expect(shownFields({ ...club, rule: 'probability' })).toContain('required');
    expect(shownFields({ ...club, rule: 'simple', item: 'diode' })).toEqual([
      'diode',
      'rule',
      'diodeU',
      'item',
    ]);
  });

  it('reaches every field in one state or another', () => {
    const shown = ITEMS.flatMap((item) =>
      (['simple', 'guardBand', 'probability'] as const).flatMap((rule) =>
        shownFields({ ...club, item, rule }),
      ),
    );
    expect([...new Set(shown)].toSorted()).toEqual(Object.keys(fields).toSorted());
  });

  it('makes the rule that it says', () => {
    expect(ruleOf({ ...club, rule: 'simple' })).toEqual({ kind: 'simple' });
    expect(ruleOf(club)).toEqual({ kind: 'guardBand', multiplier: 1 });
    expect(ruleOf(club, 'probability')).toEqual({ kind: 'probability', required: 0.95 });
  });
});

describe('the answers', () => {
  it('give verdict, chance and what would be inside', () => {
    const [verdict, chance, accepted] = answersOf(club);
    expect(verdict.figure).toBe('Can’t tell');
    expect(verdict.words).toBe(`28.20${nb}dBm ±0.69${nb}dB (k = 2), by a guard band of 1.00 times U`);
    expect(chance.figure).toBe(`80.8${nb}% within`);
    expect(chance.words).toContain('0.87 u away');
    expect(accepted.figure).toBe(`Inside: 26.19 to 27.81${nb}dBm`);
    expect(accepted.words).toContain(`2.3${nb}%`);
  });

  it('change with the rule, the reading staying where it is', () => {
    const at = (now: Partial<VerdictState>) => answersOf({ ...club, ...now })[0].figure;
    expect(at({ rule: 'simple' })).toBe('Inside');
    expect(at({ rule: 'probability' })).toBe('Can’t tell');
    expect(at({ rule: 'probability', required: 80 })).toBe('Inside');
    expect(at({ reading: 29.25 })).toBe('Outside');
    expect(at({ reading: 27 })).toBe('Inside');
  });

  it('say what U it would take where nothing can be inside', () => {
    const [verdict, , accepted] = answersOf({ ...club, expanded: 1.7, reading: 27 });
    expect(verdict.figure).toBe('Can’t tell');
    expect(accepted.figure).toBe('No reading is inside');
    expect(accepted.words).toContain(`the guard bands meet`);
    expect(accepted.words).toContain(`U = 1.50${nb}dB`);
  });

  it('speak of no guard bands where the rule has none', () => {
    const [, , accepted] = answersOf({ ...club, expanded: 2, rule: 'probability', required: 99.9 });
    expect(accepted.figure).toBe('No reading is inside');
    expect(accepted.words).toMatch(/^none reaches the probability asked for: .* U = \d/);
  });

  it('have one end where there is one limit', () => {
    const text = (item: Item) => answersOf({ ...club, item, rule: 'simple' })[2].figure;
    expect(text('diode')).toBe(`Inside: up to \u22125.400${nb}V`);
    expect(text('container')).toBe('Inside: from 490.0');
    expect(
      acceptedText('shown', club, { ...figureOf(start).judgement, acceptance: undefined } as never),
    ).toBe(strings.none);
  });

  it('say on which side of the limit a reading stands', () => {
    expect(answersOf({ ...club, reading: 29 })[1].words).toContain('1.45 u behind it');
  });

  it('speak in words without signs', () => {
    expect(summarise(club)).toBe(
      'Can’t tell: 28.20 decibel-milliwatts plus or minus 0.69 decibels (coverage factor 2), by a guard band of 1.00 times U. 80.8 percent within the limits. Called inside: 26.19 to 27.81 decibel-milliwatts.',
    );
  });
});

describe('a probability in words', () => {
  it('is never rounded to all or to nothing', () => {
    expect(shareText('shown', 0.5)).toBe(`50.0${nb}%`);
    expect(shareText('shown', 0.99949)).toBe(`99.9${nb}%`);
    expect(shareText('shown', 0.9999)).toBe(`over 99.9${nb}%`);
    expect(shareText('shown', 0.0004)).toBe(`under 0.1${nb}%`);
    expect(shareText('spoken', 0.001)).toBe('0.1 percent');
  });
});

describe('the table of risks', () => {
  it('has a row for each rule, the one in use marked', () => {
    const markup = render(<RiskTable state={club} />);
    expect(
      [...markup.matchAll(/<tr(?: class="([^"]*)")?><th scope="row"/g)].map(([, name = '']) => name),
    ).toEqual(['', 'looked-at', '']);
    expect(markup).toContain('Guard band of 1.00 U');
    expect(markup).toContain('Sent back means: outside, or can’t tell.');
  });

  it('is left out where nobody says how such things spread', () => {
    expect(render(<RiskTable state={{ ...club, item: 'diode' }} />)).toBe('');
    expect(riskNote({ ...club, item: 'container' })).toBeUndefined();
  });
});
