import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { constantsOf, definingConstant, partsOf } from '#compute';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubCurrent } from '../../src/sheet/counted-charges.ts';
import { everythingIn, nearestFirst, nodesOf, TREE_UNITS, type TreeUnit } from '../../src/sheet/unit-tree.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import type { Style } from '../../src/text/style.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { ownText } from '../../src/widgets/unit-tree/own.ts';
import { constantsText, constantText, inConstants, partsText } from '../../src/widgets/unit-tree/product.ts';
import {
  foldedAll,
  levelOf,
  openedTo,
  type TreeFields,
  type TreeState,
  treeSpec,
} from '../../src/widgets/unit-tree/spec.ts';
import { strings } from '../../src/widgets/unit-tree/strings.ts';
import { TreeFigure } from '../../src/widgets/unit-tree/TreeFigure.tsx';
import UnitTreeWidget from '../../src/widgets/unit-tree/UnitTreeWidget.tsx';
import {
  answersOf,
  bandedText,
  drawnTree,
  summarise,
  treeOf,
  unfoldedCount,
} from '../../src/widgets/unit-tree/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = treeSpec;
const prepared: TreeState = defaultState(fields);
const nb = '\u00a0';
const plain = (text: string): string => text.replaceAll(/(?<=\d)\u00a0(?=\d)/g, '').replaceAll(nb, ' ');
const reduce = reduceFields<TreeFields>(fields);
const action: fc.Arbitrary<FieldsAction<TreeFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -5, max: 60 }),
      fc.constantFrom('open', 'folded', 'ohm', 'volt', 'ampere', 'crest', 'zz'),
    ),
  }),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const STYLES: readonly Style[] = ['shown', 'spoken', 'ascii', 'unicode'];

describe('the tree under any sequence of actions', () => {
  it('can always be drawn and said, with its root at the top and finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const { values } = actions.reduce(reduce, fieldsState<TreeFields>(prepared));
        expect(treeOf(values).of).toBe(values.root);
        const said = [
          summarise(values),
          ...answersOf(values).flatMap((answer) => Object.values(answer)),
          ...TREE_UNITS.map((unit) => ownText('shown', values, unit)),
          JSON.stringify(drawnTree(values, 'full')),
        ].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined|null/);
      }),
    );
  });

  it('is unfolded and folded again by two presses of the same box', () => {
    fc.assert(
      fc.property(fc.constantFrom(...TREE_UNITS), (unit) => {
        const start = fieldsState<TreeFields>(prepared);
        const was = prepared[unit];
        const other = was === 'open' ? 'folded' : 'open';
        const twice = [other, was].reduce(
          (state, value) => reduce(state, { type: 'set', name: unit, value }),
          start,
        );
        expect(twice.values).toEqual(prepared);
      }),
    );
  });
});

describe('the address of the tree', () => {
  it('has a specification free of faults, in the units that are shown, with words for every code', () => {
    expect(specFaults(treeSpec)).toEqual([]);
    for (const name of ['level', 'half', 'load'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.root)).toEqual(Object.keys(fields.root.choices));
    expect(Object.keys(strings.settings.choices.counted)).toEqual(Object.keys(fields.counted.choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(treeSpec, encode(treeSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s transmitter, and with a watt that shows a joule and a second', () => {
    expect(levelOf(prepared)).toEqual(clubCurrent());
    expect(nodesOf(treeOf(prepared)).map(({ of }) => of)).toEqual(['watt', 'joule', 'second']);
  });
});

describe('unfolding by count', () => {
  it('shows as many open units as were asked for, as far as there are', () => {
    for (const root of ['watt', 'volt', 'ohm', 'ampere'] as const) {
      const { length } = nearestFirst(root);
      for (let count = 0; count <= length + 2; count++)
        expect(unfoldedCount(openedTo({ ...prepared, root }, count))).toBe(Math.min(count, length));
    }
  });

  it('has everything open, or the root alone', () => {
    for (const root of ['watt', 'ohm'] as const) {
      const state = { ...prepared, root };
      expect(unfoldedCount(foldedAll(state, 'open'))).toBe(everythingIn(root).units.length);
      expect(unfoldedCount(foldedAll(state, 'folded'))).toBe(1);
    }
  });
});

describe('a unit in constants', () => {
  it('is the number of the SI Brochure where that prints one (9th edition, 2.3.1; from memory but for the metre)', () => {
    const printed: Partial<Record<TreeUnit, string>> = {
      second: '9192631770 Δν⁻¹',
      metre: '30.663319 c Δν⁻¹',
      kilogram: '1.4755214 × 10⁴⁰ h Δν c⁻²',
      ampere: '6.7896868 × 10⁸ e Δν',
    };
    for (const [unit, text] of Object.entries(printed))
      expect(plain(inConstants('shown', { unit: unit as TreeUnit }))).toBe(text);
  });

  it('has every constant that is left, those above the line first', () => {
    for (const unit of TREE_UNITS) {
      const powers = constantsText('ascii', unit)
        .split(' ')
        .map((factor) => Number(factor.split('^')[1] ?? 1));
      expect(powers).toEqual(powers.toSorted((a, b) => Number(b > 0) - Number(a > 0)));
      expect(powers.toSorted()).toEqual([...constantsOf(unit).values()].toSorted());
    }
  });

  it('is read aloud in words', () => {
    expect(constantsText('spoken', 'watt')).toBe('Planck constant times caesium frequency squared');
    expect(constantsText('spoken', 'ohm')).toBe('Planck constant times elementary charge to the minus 2');
  });
});

describe('what a unit is made of', () => {
  it('is a product of its parts, with the number of a constant where there is one', () => {
    const shown = (unit: TreeUnit): string => plain(partsText('shown', unit));
    expect(shown('watt')).toBe('J s⁻¹');
    expect(shown('newton')).toBe('kg m s⁻²');
    expect(shown('second')).toBe('9192631770 Δν⁻¹');
    expect(shown('metre')).toBe('c s ÷ 299792458');
    expect(shown('ampere')).toBe('e s⁻¹ ÷ (1.602176634 × 10⁻¹⁹)');
    expect(partsText('ascii', 'kilogram')).toBe('h m^-2 s / (6.626 070 15e-34)');
    expect(partsText('spoken', 'metre')).toBe('speed of light times second divided by 299792458');
  });

  it('gives one of the unit where numbers are put for constants and one for every unit', () => {
    for (const unit of TREE_UNITS) {
      const number = partsOf(unit).reduce(
        (product, { of, power }) =>
          Object.hasOwn(strings.constantNames, of)
            ? product * definingConstant(of as 'planck') ** power
            : product,
        1,
      );
      const [, above = '1'] =
        /^(\d+) /.exec(plain(partsText('ascii', unit)).replaceAll(/(?<=\d) (?=\d)/g, '')) ?? [];
      const [, below = '1'] =
        /\/ \(?([\d.e-]+)/.exec(partsText('ascii', unit).replaceAll(/(?<=\d) (?=\d)/g, '')) ?? [];
      expect(Math.abs((Number(above) * number) / Number(below) - 1), unit).toBeLessThan(1e-12);
    }
  });

  it('ends at constants with all of their digits and their units (SI Brochure, 2.2)', () => {
    const shown = everythingIn('ohm').constants.map((constant) => plain(constantText('shown', constant)));
    expect(shown.toSorted()).toEqual([
      '1.602176634 × 10⁻¹⁹ C',
      '299792458 m/s',
      '6.62607015 × 10⁻³⁴ J s',
      '9192631770 Hz',
    ]);
  });
});

describe('the answers', () => {
  const figures = (state: Partial<TreeState>): readonly string[] =>
    answersOf({ ...prepared, ...state }).map(({ figure }) => plain(figure));

  it('give the root in constants, the reader’s own, and the charges that are counted', () => {
    expect(figures({})).toEqual([
      '1 W ≈ 1.7859292 × 10¹³ h Δν²',
      '501 mW, 428 to 587',
      '6.25 (5.77 to 6.77) × 10¹⁷ charges a second',
    ]);
    expect(figures({ root: 'volt' })[1]).toBe('5.01 V, 4.62 to 5.42');
    expect(figures({ root: 'ohm' }).slice(0, 2)).toEqual(['1 Ω ≈ 3.8740459 × 10⁻⁵ h e⁻²', '50.0 Ω']);
    expect(figures({ root: 'ampere', level: 50 })[1]).toBe('1.41 A, 1.31 to 1.53');
  });

  it('name what cancels', () => {
    const words = (root: TreeState['root']): string => answersOf({ ...prepared, root })[0].words;
    expect(words('watt')).toContain('the speed of light c cancels');
    expect(words('ohm')).toContain('the speed of light c and the caesium frequency Δν cancel on');
    expect(words('ampere')).toContain('every constant on the way down stays');
  });

  it('have ten digits, and say what they claim, where the level is taken for exact', () => {
    const [, , charges] = answersOf({ ...prepared, half: 0 });
    expect(plain(charges.figure)).toBe('6.248914810 × 10¹⁷ charges a second');
    expect(charges.words).toContain('claim that the level is known exactly');
    expect(answersOf(prepared)[2].words).not.toContain('claim');
  });

  it('say what a direct current of the crest’s size would heat with', () => {
    const [, , charges] = answersOf({ ...prepared, counted: 'crest' });
    expect(plain(charges.figure)).toBe('8.84 (8.16 to 9.57) × 10¹⁷ charges a second');
    expect(charges.words).toContain(`heat the load with 1.00${nb}W`);
  });

  it('speak in words', () => {
    expect(summarise(prepared)).toBe(
      '1 watt is about 1.7859292 times ten to the 13 times Planck constant times caesium frequency squared. 501 milliwatts, 428 to 587. 6.25 (5.77 to 6.77) times ten to the 17 charges a second. 1 of 6 units unfolded.',
    );
  });
});

describe('a number with the ends of its band', () => {
  it('has no more digits than the band bears, and its ends the same power of ten', () => {
    const shown = (value: number, half: number): string =>
      plain(bandedText('shown', { value, lower: value - half, upper: value + half }));
    expect(shown(6.2489e17, 1e15)).toBe('6.249 (6.239 to 6.259) × 10¹⁷');
    expect(shown(6.2489e17, 2e17)).toBe('6.2 (4.2 to 8.2) × 10¹⁷');
  });

  it('is as wide as its ends say, in every style', () => {
    for (const style of STYLES)
      for (const unit of TREE_UNITS) expect(ownText(style, { ...prepared, half: 1 }, unit)).toMatch(/\d/);
  });
});

describe('the widget as the server writes it', () => {
  const markup = render(<UnitTreeWidget />);

  it('has a row for every unit and constant of the watt, whatever is unfolded', () => {
    for (const name of [
      'joule',
      'newton',
      'kilogram',
      'metre',
      'second',
      'Planck constant',
      'speed of light',
    ])
      expect(markup).toMatch(new RegExp(`<th[^>]*>[^<]*${name}`));
    expect([...markup.matchAll(/aria-expanded="(true|false)"/g)]).toHaveLength(6);
  });

  it('draws the whole tree once more for those without script, wide and narrow', () => {
    expect([...markup.matchAll(/data-frame="(\w+)"/g)].map(([, frame]) => frame)).toEqual([
      'wide',
      'narrow',
      'wide',
      'narrow',
    ]);
    const [, whole = ''] = markup.split('no-script-only');
    expect(whole).toContain('caesium frequency');
  });

  it('has no id twice, no style of its own, and no broken number', () => {
    const ids = [...markup.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(markup).not.toMatch(/\sstyle=|NaN|Infinity|undefined|\[object/);
  });

  it('has symbols alone on the wall, constants with a short name', () => {
    const wall = render(<TreeFigure state={foldedAll(prepared, 'open')} place="stage" />).replace(
      /<(title|desc) .*?<\/\1>/gs,
      '',
    );
    expect(wall).toContain('Planck');
    expect(wall).not.toMatch(/>[^<]*(kilogram|constant)/);
  });
});
