import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { mergeQuery } from '../../src/address/merge.ts';
import { scalarFault } from '../../src/address/scalar.ts';
import { anyText } from '../text/any-text.ts';
import { anyState } from './any-state.ts';
import { fields, spec } from './demonstration.ts';

const ENDINGS = ['.', ')', '>', ',', '\u201d', '.)', ' ', '\n', '!', "'", ';', '>.', '\u00bb', '*', '_', '~'];
const escaped = (text: string, pattern: RegExp) =>
  text.replace(pattern, (char) => `%${char.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`);

describe('laws of addresses', () => {
  test('a state opens from its address exactly as it was', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(spec, encode(spec, state))).toEqual({ state, problems: [], carried: true });
      }),
      { numRuns: 300 },
    );
  });

  test('an address has safe characters alone and ends on its version, whatever the state', () => {
    fc.assert(
      fc.property(anyState(fields), fc.constantFrom(undefined, 'a', 'left2'), (state, instance) => {
        expect(encode(spec, state, instance)).toMatch(/^[A-Za-z0-9._=&-]*v=1$/);
      }),
    );
  });

  test('any text opens as an allowed state, with a sentence for each thing that could not be taken', () => {
    const piece = fc.constantFrom(
      'p',
      'n',
      'l',
      'l1n',
      'l2g',
      'v',
      '=',
      '=',
      '&',
      '&',
      '1',
      '-',
      '.',
      '%',
      '#',
      '3D',
      '__proto__',
      'constructor',
      '\u202e',
      'e9',
      'NaN',
      '\0',
    );
    const text = fc.oneof(
      anyText(),
      fc.array(piece, { maxLength: 40 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(text, (address) => {
        const { state, problems } = decode(spec, address);
        expect(() => encode(spec, state)).not.toThrow();
        for (const { sentence } of problems) expect(sentence).toMatch(/^.+\.$/su);
      }),
      { numRuns: 1000 },
    );
  });

  test('what mail and forums do to an address changes nothing', () => {
    const damage = fc.constantFrom<(address: string) => string>(
      (address) => address.replaceAll('&', '&amp;'),
      (address) => address.replaceAll('&', '&#38;'),
      (address) => escaped(address, /=/g),
      (address) => escaped(address, /[=&.]/g),
      (address) => escaped(escaped(address, /[=&]/g), /%/g),
      (address) => `%23${address}`,
      (address) => `#${address}`,
      (address) => `?${address}`,
      (address) => address.replace(/.{40}/g, '$&\n> '),
      (address) => `<${address}>`,
      (address) => address.replaceAll('_', '\\_'),
      (address) => address.replaceAll('=', '=3D').replace(/.{70}/g, '$&=\r\n'),
    );
    fc.assert(
      fc.property(anyState(fields), damage, fc.constantFrom('', ...ENDINGS), (state, harm, ending) => {
        expect(decode(spec, harm(encode(spec, state)) + ending)).toEqual({
          state,
          problems: [],
          carried: true,
        });
      }),
      { numRuns: 300 },
    );
  });

  test('an address cut short anywhere is told, and what remains is allowed', () => {
    fc.assert(
      fc.property(anyState(fields), fc.nat(), (state, at) => {
        const whole = encode(spec, state);
        const { state: opened, problems, carried } = decode(spec, whole.slice(0, at % whole.length));
        expect(() => encode(spec, opened)).not.toThrow();
        if (carried) expect(problems.length).toBeGreaterThan(0);
      }),
    );
  });

  test('two instances on one page never read each other, in any order', () => {
    fc.assert(
      fc.property(anyState(fields), anyState(fields), fc.boolean(), (one, two, swap) => {
        const parts = [encode(spec, one, 'a'), encode(spec, two, 'b')];
        const query = (swap ? parts.toReversed() : parts).join('&');
        expect(decode(spec, query, 'a').state).toEqual(one);
        expect(decode(spec, query, 'b').state).toEqual(two);
        expect(decode(spec, query)).toEqual({ state: defaultState(fields), problems: [], carried: false });
      }),
    );
  });

  test('exchanging one instance in a query leaves the others as they were', () => {
    fc.assert(
      fc.property(anyState(fields), anyState(fields), anyState(fields), (one, two, three) => {
        const both = mergeQuery({
          query: `?${encode(spec, one, 'a')}`,
          encoded: encode(spec, two, 'b'),
          instance: 'b',
        });
        const changed = mergeQuery({ query: both, encoded: encode(spec, three, 'a'), instance: 'a' });
        expect(decode(spec, changed, 'a').state).toEqual(three);
        expect(decode(spec, changed, 'b').state).toEqual(two);
        expect(changed.match(/\ba\.v=/g)).toHaveLength(1);
      }),
    );
  });

  test('a list of a thousand wild records is cut to what fits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 25, max: 999999 }), (count) => {
        const { state, problems } = decode(spec, `l=${count}&l1n=x&v=1`);
        expect(state.links).toHaveLength(24);
        expect(problems).toHaveLength(1);
      }),
    );
  });

  test('every allowed value is found without fault, every other with one', () => {
    fc.assert(
      fc.property(fc.double(), (value) => {
        const allowed = Number.isFinite(value) && value >= -60 && value <= 60;
        expect(scalarFault(fields.pad, value) === undefined).toBe(allowed);
      }),
    );
  });
});
