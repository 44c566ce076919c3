import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { queryWith, readQuery } from '../../src/widgets/parts/address.ts';
import { presetSheet } from '../../src/widgets/reading-band/presets.ts';
import { bandSpec, toAddressState } from '../../src/widgets/reading-band/spec.ts';
import { anyState } from '../address/any-state.ts';

const shown = { showLimits: true, showCurve: false };
const sheet = presetSheet('club');
const spec = bandSpec(sheet, shown);
const prepared = toAddressState(sheet, sheet, shown);
const changed = { ...prepared, pad: 0.1 };
const instance = fc.constantFrom(undefined, 'a', 'b', 'second2');

describe('two widgets in one query', () => {
  it('each open as they were left, whichever was written first', () => {
    fc.assert(
      fc.property(anyState(spec.fields), anyState(spec.fields), instance, instance, (one, two, a, b) => {
        fc.pre(a !== b);
        const first = queryWith({ spec, state: one, query: '', instance: a });
        const both = queryWith({ spec, state: two, query: first, instance: b });
        expect(readQuery(spec, both, a)).toMatchObject({ state: one, problems: [] });
        expect(readQuery(spec, both, b)).toMatchObject({ state: two, problems: [] });
      }),
    );
  });

  it('leave each other alone when one goes back to what was prepared', () => {
    const both = '?a.pa=0.2&a.v=1&b.pa=0.1&b.v=1';
    expect(queryWith({ spec, state: prepared, query: both, instance: 'b' })).toBe('?a.pa=0.2&a.v=1');
    expect(queryWith({ spec, state: prepared, query: both, instance: 'a' })).toBe('?b.pa=0.1&b.v=1');
    expect(queryWith({ spec, state: prepared, query: both, instance: undefined })).toBe(both);
  });
});

describe('the query of one widget', () => {
  it('is replaced and not made longer by every change', () => {
    fc.assert(
      fc.property(anyState(spec.fields), anyState(spec.fields), instance, (one, two, name) => {
        const once = queryWith({ spec, state: two, query: '', instance: name });
        const before = queryWith({ spec, state: one, query: '', instance: name });
        expect(queryWith({ spec, state: two, query: before, instance: name })).toBe(once);
      }),
    );
  });

  it('has only what was changed, and nothing where nothing is', () => {
    expect(queryWith({ spec, state: changed, query: '', instance: undefined })).toBe('?pa=0.1&v=1');
    expect(queryWith({ spec, state: changed, query: '', instance: 'b' })).toBe('?b.pa=0.1&b.v=1');
    expect(queryWith({ spec, state: prepared, query: '?pa=0.1&v=1', instance: undefined })).toBe('');
  });
});
