import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { amountOf } from '../../src/sheet/amount.ts';
import { queryWith, readQuery } from '../../src/widgets/parts/address.ts';
import { AMOUNT } from '../../src/widgets/reading-band/amount.ts';
import { PRESETS, presetSheet } from '../../src/widgets/reading-band/presets.ts';
import { bandSpec, fromAddressState, toAddressState } from '../../src/widgets/reading-band/spec.ts';
import { allowed } from '../../src/widgets/reading-band/state.ts';
import { anyState } from '../address/any-state.ts';

const shown = { showLimits: true, showCurve: false };

describe.each(PRESETS)('the address of the prepared chain %s', (preset) => {
  const sheet = presetSheet(preset);
  const spec = bandSpec(sheet, shown);

  it('has a specification free of faults, with a key of its own for every rung', () => {
    expect(specFaults(spec)).toEqual([]);
    const keys = Object.values(spec.fields).map(({ key }) => key);
    expect(new Set(keys).size).toBe(sheet.links.length + 4);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(spec.fields), (state) => {
        const { state: back, problems } = decode(spec, encode(spec, state));
        expect(problems).toEqual([]);
        expect(back).toEqual(state);
      }),
    );
  });

  it('brings a sheet to the amounts and switches that a state names, and back', () => {
    const amount = fc.double({ min: AMOUNT.min, max: AMOUNT.max, noNaN: true }).map(allowed);
    fc.assert(
      fc.property(
        fc.array(amount, { minLength: 6, maxLength: 6 }),
        fc.boolean(),
        fc.boolean(),
        (amounts, a, b) => {
          const wanted = Object.fromEntries(sheet.links.map(({ id }, index) => [id, amounts[index] ?? 0]));
          const opened = fromAddressState(sheet, {
            ...wanted,
            showLimits: a ? 'on' : 'off',
            showCurve: b ? 'on' : 'off',
          });
          expect([opened.showLimits, opened.showCurve]).toEqual([a, b]);
          for (const { id, statement } of opened.sheet.links) expect(amountOf(statement)).toBe(wanted[id]);
          expect(toAddressState(sheet, opened.sheet, opened)).toMatchObject(wanted);
        },
      ),
    );
  });

  it('leaves everything but the amounts of the sheet as it was', () => {
    expect(fromAddressState(sheet, toAddressState(sheet, sheet, shown))).toEqual({ ...shown, sheet });
    expect(fromAddressState(sheet, {}).sheet).toEqual(sheet);
  });

  it('is empty where nothing has been changed, and leaves what is not its own', () => {
    const state = toAddressState(sheet, sheet, shown);
    expect(queryWith({ spec, state, query: '', instance: undefined })).toBe('');
    expect(queryWith({ spec, state, query: '?b.x=1', instance: undefined })).toContain('b.x=1');
  });
});

describe('a query about the club’s chain', () => {
  const spec = bandSpec(presetSheet('club'), shown);
  const told = (query: string) => readQuery(spec, query, undefined);

  it('that was mangled on its way is mended', () => {
    expect(told('?pa%3D0.1&amp;v=1').state).toMatchObject({ pad: 0.1 });
    expect(told('?pa%3D0.1&amp;v=1').problems).toEqual([]);
  });

  it('with text for a number, beyond the limits, of a later version or with unknown keys is told', () => {
    for (const query of ['?pa=zz&v=1', '?pa=99&v=1', '?pa=-1&v=1', '?v=9', '?zz=1&v=1']) {
      const { problems, state } = told(query);
      expect(problems.length, query).toBeGreaterThan(0);
      expect(
        problems.every(({ sentence }) => /^\S.*\.$/s.test(sentence)),
        query,
      ).toBe(true);
      expect(state, query).toEqual(toAddressState(presetSheet('club'), presetSheet('club'), shown));
    }
  });

  it('cut short loses what was cut and tells so', () => {
    expect(told('?pa=0.1&me=').problems.length).toBeGreaterThan(0);
    expect(told('?pa=0.1&me=').state).toMatchObject({ pad: 0.1, meter: 0.25 });
  });
});
