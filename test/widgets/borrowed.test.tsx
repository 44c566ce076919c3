import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { demonstrationEntries } from '../../src/borrow/demonstration.ts';
import { LineBand } from '../../src/figures/LineBand.tsx';
import { CLUB_READINGS, clubBorrowed } from '../../src/sheet/borrowed.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/borrowed/figure.ts';
import { PlacesTable } from '../../src/widgets/borrowed/PlacesTable.tsx';
import {
  type BorrowedFields,
  type BorrowedState,
  borrowedOf,
  borrowedSpec,
  pulledField,
  shownFields,
} from '../../src/widgets/borrowed/spec.ts';
import { strings } from '../../src/widgets/borrowed/strings.ts';
import { answersOf, placeRows, summarise } from '../../src/widgets/borrowed/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';
import { drawnTexts, letterSize, outsideOf, touching } from '../figures/drawn-text.ts';

const { fields } = borrowedSpec;
const club: BorrowedState = defaultState(fields);
const thermometer: BorrowedState = { ...club, item: 'thermometer' };
const nb = '\u00a0';
const start = fieldsState<BorrowedFields>(club);
const reduce = reduceFields<BorrowedFields>(fields);
const action: fc.Arbitrary<FieldsAction<BorrowedFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -20, max: 50 }),
      fc.constantFrom('meter', 'thermometer', 'averaged', 'whole', 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: club } as const),
);

describe('the line under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 12 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, at, domain } = figureOf(state);
        if (!state.held)
          for (const { lower, upper } of band) expect(Math.max(-lower, upper)).toBeLessThanOrEqual(span);
        expect(at.x >= domain.lower && at.x <= domain.upper).toBe(true);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const wide = reduce(held, { type: 'set', name: 'lender', value: 1 });
    expect(figureOf(wide).span).toBe(figureOf(held).span);
  });
});

describe('the address of the line', () => {
  it('has a specification free of faults, units that its kinds have, and words for every code', () => {
    expect(specFaults(borrowedSpec)).toEqual([]);
    for (const name of ['reading', 'lender', 'months', 'temperature', 'origin'] as const)
      expect(kindOf(fields[name].kind).base, name).toBe(strings.settings.units[name]);
    for (const name of ['item', 'shared'] as const)
      expect(Object.keys(strings.settings.choices[name])).toEqual(Object.keys(fields[name].choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(borrowedSpec, encode(borrowedSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the reading of the bench’s own demonstration, and its readings', () => {
    expect(borrowedOf(club)).toEqual(clubBorrowed());
    const entries = demonstrationEntries('line');
    expect(Number(entries.later)).toBe(club.reading);
    expect(Number(entries.amount)).toBe(club.lender);
    expect(entries.places.map(({ readings }) => readings.split('\n'))).toEqual(CLUB_READINGS);
  });

  it('shows every field in one state or the other, the pulled one first', () => {
    const shown = [...shownFields('meter'), ...shownFields('thermometer')];
    expect([...new Set(shown)].toSorted()).toEqual(Object.keys(fields).toSorted());
    for (const item of ['meter', 'thermometer'] as const)
      expect(shownFields(item)[0]).toBe(pulledField(item));
  });
});

describe('the figure', () => {
  it('has a circle for each place, and the line by the readings alone inside the other', () => {
    const { points = [], band, ghost = [] } = figureOf(start);
    expect(points).toHaveLength(4);
    band.forEach(({ lower, upper }, index) => {
      expect(ghost[index]?.lower).toBeGreaterThan(lower);
      expect(ghost[index]?.upper).toBeLessThan(upper);
    });
    expect(figureOf(fieldsState<BorrowedFields>(thermometer)).points).toHaveLength(11);
  });

  it('says nothing beyond the levels that were compared', () => {
    const beyond = figureOf(fieldsState<BorrowedFields>({ ...club, reading: 18 }));
    expect(beyond.at).toEqual({ x: 18, y: undefined });
    expect(Math.max(...beyond.band.map(({ x }) => x))).toBeLessThan(14);
  });

  it.each(['wide', 'narrow', 'stage'] as const)('writes nothing into anything else, %s', (frame) => {
    const rule = { wide: '.plot text', narrow: '.plot-narrow text', stage: '.plot-stage text' }[frame];
    for (const values of [club, { ...club, lender: 1 }, { ...club, reading: 18 }, thermometer]) {
      const figure = figureOf(fieldsState<BorrowedFields>(values));
      const words = strings.axes[values.item];
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
  it('give the correction, the corrected reading, and what no care gets below', () => {
    const [correction, later, floor] = answersOf(club);
    expect(correction.figure).toBe(`Correction \u22120.71${nb}dB ±0.30${nb}dB`);
    expect(later.figure).toBe(`4.49${nb}dBm ±0.36${nb}dB`);
    expect(later.words).toContain('no month of drift');
    expect(floor.figure).toBe(`Never below ±0.23${nb}dB`);
  });

  it('grow with the months', () => {
    const at = (months: number) => answersOf({ ...club, months })[1];
    expect(at(1).words).toContain('a month of drift');
    expect(at(24).figure).toContain('±0.43');
  });

  it('are no correction beyond the levels', () => {
    const [correction, later] = answersOf({ ...club, reading: 18 });
    expect(correction.figure).toBe('No correction');
    expect(correction.words).toContain(`from \u22129.3${nb}dBm to 13.6${nb}dBm`);
    expect(later.figure).toBe(`18.0${nb}dBm as shown`);
  });

  it('say what is due where the lender was divided', () => {
    const [correction, , floor] = answersOf({ ...club, shared: 'averaged' });
    expect(correction.figure).toContain('±0.22');
    expect(floor.words).toContain(`±0.22${nb}dB where ±0.30${nb}dB is due`);
  });

  it('accuse nobody of a claim where nothing is claimed, or where the lender brings nothing', () => {
    const beyond = answersOf({ ...club, shared: 'averaged', reading: 18 });
    expect(beyond[2]).toEqual(answersOf({ ...club, reading: 18 })[2]);
    expect(new Set(beyond.map(({ words }) => words)).size).toBe(3);
    expect(summarise({ ...club, shared: 'averaged', reading: 18 })).not.toContain(strings.averaged);
    expect(answersOf({ ...club, shared: 'averaged', lender: 0 })[2].words).toBe(strings.floorWords);
  });

  it('have a lender that knows everything, and still an uncertainty', () => {
    const [correction, , floor] = answersOf({ ...club, lender: 0 });
    expect(floor.figure).toBe(`Never below ±0.00${nb}dB`);
    expect(correction.figure).toContain('±0.19');
  });

  it('are the thermometer’s, to the digits of its print', () => {
    const [correction, line, apart] = answersOf(thermometer);
    expect(correction.figure).toBe(`\u22120.1494${nb}°C, u = 0.0041${nb}°C`);
    expect(correction.words).toContain('9 degrees of freedom; beyond the readings');
    expect(answersOf({ ...thermometer, temperature: 25 })[0].words).not.toContain('beyond');
    expect(line.figure).toBe(`\u22120.1712${nb}°C and +0.00218${nb}°C for each kelvin from 20${nb}°C on`);
    expect(line.words).toContain('correlation \u22120.930');
    expect(apart.figure).toBe(`u = 0.0073${nb}°C otherwise`);
    expect(answersOf({ ...thermometer, origin: 24.0085 })[1].figure).toMatch(/0\.1625.*from 24\.0085/);
  });

  it('speak in words without signs', () => {
    expect(summarise(club)).toBe(
      'Correction minus 0.71 decibels plus or minus 0.30 decibels. The reading, corrected, is 4.49 decibel-milliwatts plus or minus 0.36 decibels. Never below plus or minus 0.23 decibels.',
    );
  });
});

describe('the table of places', () => {
  it('has a row for each level', () => {
    const markup = render(<PlacesTable />);
    expect([...markup.matchAll(/<th scope="row">/g)]).toHaveLength(CLUB_READINGS.length);
    expect(placeRows()[0]).toEqual([`\u22129.26${nb}dBm`, `\u22120.78${nb}dB`, `±0.076${nb}dB`]);
  });
});
