import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import type { AddressSpec } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { addresses } from './addresses.ts';
import { type Kind, kinds } from './kinds.ts';

const specOf = (kind: Kind): AddressSpec => kinds[kind];

describe('addresses once given out', () => {
  test.each(addresses)('$kind, version $version, opens for ever: $address', ({ kind, address, opens }) => {
    const { state, problems } = decode(specOf(kind), address);
    expect(problems).toEqual([]);
    expect(state).toMatchObject(opens);
  });

  test.each(addresses)('$kind, version $version, says its own version: $address', ({ version, address }) => {
    expect(address).toMatch(new RegExp(`(^|[&.])v=${version}$`));
  });

  test.each(Object.keys(kinds) as Kind[])('every version of %s has one here', (kind) => {
    const { version } = specOf(kind);
    const kept = new Set(addresses.filter((entry) => entry.kind === kind).map((entry) => entry.version));
    expect([...kept].sort()).toEqual(Array.from({ length: version }, (_, index) => index + 1));
  });

  test.each(Object.keys(kinds) as Kind[])('every field of %s is opened by one of them', (kind) => {
    const opened = new Set(
      addresses.flatMap((entry) => (entry.kind === kind ? Object.keys(entry.opens) : [])),
    );
    const never = Object.keys(specOf(kind).fields).filter((name) => !opened.has(name));
    expect(never, 'a new field has a line in test/corpus/addresses.ts').toEqual([]);
  });

  test.each(Object.keys(kinds) as Kind[])('the specification of %s is free of faults', (kind) => {
    expect(specFaults(specOf(kind))).toEqual([]);
  });
});
