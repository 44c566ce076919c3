import { describe, expect, test } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { type AddressSpec, defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { decodeText, encodeText } from '../../src/address/text-code.ts';
import { fields, spec } from './demonstration.ts';

const initial = defaultState(fields);
const open = (address: string) => decode(spec, address);
const told = (address: string) => open(address).problems.map(({ sentence }) => sentence);
const NBSP = '\u00a0';

describe('an address', () => {
  test('of the first state is only its version', () => {
    expect(encode(spec, initial)).toBe('v=1');
  });

  test('leaves out what is at its default and can be read by eye', () => {
    const links = [
      { label: '20 dB pad', lossDb: 20, form: 'limits' },
      { label: '3 m of coax', lossDb: 0, form: 'expanded' },
    ] as const;
    expect(encode(spec, { ...initial, pad: -6.5, rating: 0.25, links })).toBe(
      'p=-6.5&r=0.25&l=2&l1n=20-dB-pad&l1g=20&l2n=3-m-of-coax&l2f=u&v=1',
    );
  });

  test('says that an optional value is absent where its default is not', () => {
    expect(encode(spec, { ...initial, limit: undefined })).toBe('u=&v=1');
    expect(open('u=&v=1').state.limit).toBeUndefined();
  });

  test('can hold an empty list and an empty text', () => {
    const address = encode(spec, { ...initial, links: [], title: '' });
    expect(address).toBe('t=&l=0&v=1');
    expect(open(address).state).toEqual({ ...initial, links: [], title: '' });
  });

  test('keeps numbers of any size exactly, and needs no plus', () => {
    const wide = { ...fields.pad, min: -1e300, max: 1e300 };
    const one = { version: 1, fields: { pad: wide } } as const;
    for (const pad of [1e21, -1e-7, 5e-324, 0.1 + 0.2, -0])
      expect(decode(one, encode(one, { pad })).state.pad).toBe(pad);
    expect(encode(one, { pad: 1e21 })).toBe('p=1e21&v=1');
  });

  test('is not made of a state that is not allowed', () => {
    expect(() => encode(spec, { ...initial, pad: 61 })).toThrow('encode: pad must be from -60 to 60, got 61');
    expect(() => encode(spec, { ...initial, pad: Number.NaN })).toThrow(
      /pad is not a finite number, got NaN/,
    );
    expect(() => encode(spec, { ...initial, repeats: 2.5 })).toThrow(/repeats must be whole, got 2.5/);
    expect(() => encode(spec, { ...initial, title: 'a\u202eb' })).toThrow(
      /title is not one line of clean text/,
    );
    expect(() => encode(spec, { ...initial, title: 'a'.repeat(41) })).toThrow(/title is longer than 40/);
    const links = Array.from({ length: 25 }, () => ({ label: '', lossDb: 0, form: 'limits' as const }));
    expect(() => encode(spec, { ...initial, links })).toThrow(/links must have at most 24 records, got 25/);
    expect(() => encode(spec, { ...initial, links: [{ label: '', lossDb: 101, form: 'limits' }] })).toThrow(
      /links\.1\.lossDb must be from -100 to 100, got 101/,
    );
  });
});

describe('a value that cannot be taken is told, its text kept, its default used', () => {
  test('out of its range', () => {
    expect(open('p=70&v=1')).toEqual({
      state: initial,
      carried: true,
      problems: [
        {
          where: 'pad',
          text: '70',
          sentence: `First pad: \u201c70\u201d is above the largest value accepted here, 60.0${NBSP}dB. \u221220.0${NBSP}dB stands instead.`,
        },
      ],
    });
  });

  test('not a number, not whole, without a default', () => {
    expect(told('p=loud&v=1')[0]).toMatch(
      /^First pad: \u201cloud\u201d is not a number: .* stands instead\.$/,
    );
    expect(told('n=2.5&v=1')[0]).toMatch(
      /^Readings: \u201c2\.5\u201d is not a whole number: one is expected\. 5 stands instead\.$/,
    );
    expect(told('r=-1&v=1')[0]).toMatch(/^Rating: .*below the smallest.* It is left open\.$/);
    expect(told('p=&v=1')[0]).toMatch(/^First pad: Nothing is typed yet/);
  });

  test('not among the choices', () => {
    expect(open('d=x&v=1').problems).toEqual([
      { where: 'rule', text: 'x', sentence: 'Rule: \u201cx\u201d is not among s or g. s stands instead.' },
    ]);
  });

  test('too long, or damaged inside', () => {
    expect(open(`t=${'a'.repeat(50)}&v=1`).state.title).toBe('a'.repeat(40));
    expect(told(`t=${'a'.repeat(50)}&v=1`)).toEqual([
      'Title: the text is longer than 40 letters and was cut.',
    ]);
    expect(told('t=a_b&v=1')).toEqual(['Title: the text was damaged on its way; what could be read stands.']);
  });

  test('in a list, with the number of its record', () => {
    const { state, problems } = open('l=2&l1n=pad&l2n=coax&l2g=1000&v=1');
    expect(state.links.map(({ label, lossDb }) => [label, lossDb])).toEqual([
      ['pad', 0],
      ['coax', 0],
    ]);
    expect(problems.map(({ where, text }) => [where, text])).toEqual([['links.2.lossDb', '1000']]);
  });
});

describe('an address typed by hand', () => {
  test('may use commas, units and capitals', () => {
    expect(open('P=-6,5&D=G&U=200mW&V=1')).toMatchObject({
      state: { pad: -6.5, rule: 'guardBand', limit: expect.closeTo(23.01, 2) },
      problems: [],
    });
  });

  test('without a version is taken and told', () => {
    const { state, problems } = open('p=3');
    expect(state.pad).toBe(3);
    expect(problems.map(({ sentence }) => sentence)).toEqual([
      'The address has lost its end, or was typed by hand: its last value may be wrong and others missing.',
    ]);
  });
});

describe('what an address says of nothing here', () => {
  test('unknown keys are told and left out', () => {
    expect(open('p=3&zz=9&v=1')).toMatchObject({ state: { ...initial, pad: 3 } });
    expect(told('p=3&zz=9&v=1')).toEqual(['\u201czz\u201d means nothing here and was left out.']);
  });

  test('names from the prototype are keys like any other', () => {
    const { state } = open('__proto__=1&constructor=2&toString=3&d=constructor&v=1');
    expect(state).toEqual(initial);
    expect(told('__proto__=1&constructor=2&v=1')).toHaveLength(2);
    expect(Object.getPrototypeOf(state)).toBe(Object.prototype);
  });

  test('a key said twice counts once, and is told unless both agree', () => {
    expect(open('p=3&p=4&v=1').state.pad).toBe(3);
    expect(told('p=3&p=4&v=1')).toEqual(['The address says \u201cp\u201d twice: \u201c3\u201d counts.']);
    expect(told('p=3&p=3&v=1')).toEqual([]);
  });

  test('a place on the page, or nothing, is no state', () => {
    for (const address of ['', '#', '?', '#takeaways', '&&&', '=5'])
      expect(open(address)).toEqual({ state: initial, problems: [], carried: false });
  });

  test('a place after the state does not disturb it', () => {
    expect(open('?p=3&v=1#takeaways')).toMatchObject({ state: { pad: 3 }, problems: [] });
  });

  test('a flood of unknown keys is told in twenty sentences and one', () => {
    const flood = Array.from({ length: 5000 }, (_, index) => `z${index}=1`).join('&');
    expect(told(`${flood}&v=1`)).toHaveLength(21);
    expect(told(`${flood}&v=1`).at(-1)).toBe('4980 more things in the address could not be taken.');
  });

  test('a megabyte is not read', () => {
    const { state, problems, carried } = open(`t=${'a'.repeat(1e6)}`);
    expect([state, carried]).toEqual([initial, false]);
    expect(problems).toMatchObject([
      { where: '', sentence: expect.stringMatching(/longer than 100000 letters/) },
    ]);
    expect(problems[0]?.text.length).toBe(200);
    expect(told('p=3&v=1'.padEnd(100_000, '.'))).toEqual([]);
  });
});

describe('versions', () => {
  const second: AddressSpec<typeof fields> = {
    version: 3,
    fields,
    older: {
      1: (pairs) => new Map([...pairs].map(([key, value]) => [key === 'a' ? 'b' : key, value])),
      2: (pairs) => new Map([...pairs].map(([key, value]) => [key === 'b' ? 'p' : key, value])),
    },
  };

  test('a later one is told and nothing of it is guessed', () => {
    expect(open('p=3&v=2')).toMatchObject({ state: initial, carried: true });
    expect(told('p=3&v=2')).toEqual([
      'The address was made by a later version of this site (2). The state that the page begins with stands instead.',
    ]);
  });

  test.each(['0', '12', 'x', '-1'])('%s is none', (version) => {
    expect(open(`p=3&v=${version}`).state).toEqual(initial);
    expect(told(`p=3&v=${version}`)[0]).toMatch(/is no version of this kind of address\./);
  });

  test('an old one is brought up step by step, for ever', () => {
    expect(decode(second, 'a=7&v=1')).toMatchObject({ state: { pad: 7 }, problems: [] });
    expect(decode(second, 'b=7&v=2')).toMatchObject({ state: { pad: 7 }, problems: [] });
    expect(decode(second, 'p=7&v=3')).toMatchObject({ state: { pad: 7 }, problems: [] });
  });

  test('an old one without a way up is told', () => {
    const lost = { ...second, older: {} };
    expect(decode(lost, 'p=7&v=1')).toMatchObject({
      state: initial,
      problems: [
        { sentence: expect.stringMatching(/^Version 1 of this kind of address cannot be read here\./) },
      ],
    });
  });
});

describe('lists', () => {
  test('without their number have as many records as there are pairs for', () => {
    const { state, problems } = open('l1n=a&l3n=c&v=1');
    expect(state.links.map(({ label }) => label)).toEqual(['a', '', 'c']);
    expect(problems[0]?.sentence).toBe(
      'Links: the address does not say how many there are; 3 could be read.',
    );
  });

  test('longer than their place are cut and told once', () => {
    expect(told('l=30&l30n=z&v=1')).toEqual(['Links: 30 are more than fit here; the first 24 stand.']);
    expect(open('l=24&v=1').problems).toEqual([]);
  });

  test('tell a record beyond the last', () => {
    expect(told('l=1&l1n=a&l2n=b&v=1')).toEqual(['Links: \u201cl2n\u201d lies beyond the last, 1.']);
  });
});

describe('text in an address', () => {
  test.each([
    ['3 m of coax, thin', '3-m-of-coax_2c--thin'],
    ['50 \u03a9-Pad.', '50-_3a9-_2d-Pad.'],
    ['-13.4', '-13.4'],
    [' 5', '_20-5'],
    ['7.1 7.2 -7.3', '7.1-7.2-_2d-7.3'],
    ['a_b', 'a_5f-b'],
    ['', ''],
  ])('%s is %s', (text, encoded) => {
    expect(encodeText(text)).toBe(encoded);
    expect(decodeText(encoded)).toEqual({ text, damaged: false });
  });

  test('may have its hexadecimal digits in capitals', () => {
    expect(decodeText('_3A9-')).toEqual({ text: '\u03a9', damaged: false });
  });

  test.each(['a_b', 'a_ffffff-', '_d800-', '_202e-', '_7-', 'a*b', 'a_'])('%s is damaged', (value) => {
    const { text, damaged } = decodeText(value);
    expect(damaged).toBe(true);
    expect(text.isWellFormed()).toBe(true);
  });

  test('keeps line ends where its field has lines, and nowhere else', () => {
    const note = { version: 1, fields: { note: { ...fields.title, lines: true } } } as const;
    const address = encode(note, { note: '7.1\n7.2' });
    expect(address).toBe('t=7.1_a-7.2&v=1');
    expect(decode(note, address)).toMatchObject({ state: { note: '7.1\n7.2' }, problems: [] });
    expect(() => encode(note, { note: 'a\u0007' })).toThrow(/note is not clean text/);
    expect(open(address)).toMatchObject({ state: { title: '7.1 7.2' } });
    expect(told(address)).toHaveLength(1);
  });
});

describe('a specification', () => {
  test('without faults has none', () => {
    expect(specFaults(spec)).toEqual([]);
  });

  test('with bad keys, codes, defaults or version has each told', () => {
    const { pad, rule, title, links } = fields;
    const bad: AddressSpec = {
      version: 10,
      fields: {
        one: { ...pad, key: 'v' },
        two: { ...pad, key: 'Long' },
        three: { ...pad, key: 'p', default: 99 },
        four: { ...title, key: 'p' },
        five: { ...rule, choices: { simple: 's', other: 's', third: 'T' } },
        seven: { ...pad, key: 'zip' },
        six: { ...links, maxLength: 1000, default: [{ label: '', lossDb: 101, form: 'limits' }] },
      },
    };
    expect(specFaults(bad)).toEqual([
      'version 10 is not 1 to 9',
      'key p is used twice',
      'one: v is no key',
      'two: Long is no key',
      'three: its default must be from -60 to 60',
      'five: T is no short code',
      'five: s is used twice',
      'seven: zip is no key',
      'six: more than 999 records',
      'six.1.lossDb: its default must be from -100 to 100',
    ]);
  });
});
