import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FileForm, LARGEST_FILE } from '../../src/exchange/file-form.ts';
import { readFile, sizeProblem } from '../../src/exchange/read-file.ts';
import { writeFile } from '../../src/exchange/write-file.ts';
import { anyState } from '../address/any-state.ts';
import { fields } from '../address/demonstration.ts';
import { anyText } from '../text/any-text.ts';
import { bytesOf, fileOf, form } from './demonstration.ts';

const SAVED = '2026-05-09T10:00:00.000Z';
const read = (bytes: Uint8Array) => readFile(form, bytes);
const problemOf = (bytes: Uint8Array): string => {
  const result = read(bytes);
  return result.ok ? 'none' : result.problem;
};
const textOf = (things: Parameters<typeof writeFile<typeof form.lists>>[1]): string => {
  const written = writeFile(form, things, SAVED);
  if (!written.ok) throw new Error(written.problem);
  return written.text;
};
/** JSON has no negative zero. */
const withoutMinusZero = <Of>(value: Of): Of =>
  JSON.parse(
    JSON.stringify(value, (_, part) => (part === undefined ? 'absent' : part)),
    (_, part) => (part === 'absent' ? undefined : part),
  );

describe('a file', () => {
  test('brings back every state that it was made of', () => {
    fc.assert(
      fc.property(fc.array(anyState(fields), { minLength: 1, maxLength: 3 }), (things) => {
        const result = read(bytesOf(textOf({ things })));
        expect(result).toEqual({ ok: true, held: { things: withoutMinusZero(things) }, notes: [] });
      }),
    );
  });

  test('is JSON that says what it is, in which version, and when it was saved', () => {
    const written = JSON.parse(textOf({ things: [] }));
    expect(written).toEqual({ file: 'how-sure-is-a-watt', version: 2, saved: SAVED, things: [] });
  });

  test('leaves out what is at its default, which then has it again', () => {
    const result = read(fileOf({ things: [{}] }));
    expect(result.ok && result.held.things[0]).toMatchObject({ pad: -20, limit: 28.5, rule: 'simple' });
    expect(textOf(result.ok ? result.held : {})).not.toContain('limit');
  });

  test('may begin with a byte order mark, as some editors write it', () => {
    const marked = new Uint8Array([0xef, 0xbb, 0xbf, ...fileOf({ things: [{ pad: 3 }] })]);
    expect(read(marked).ok).toBe(true);
  });

  test('takes no control characters and no turned writing out of a text', () => {
    const result = read(fileOf({ things: [{ title: 'a\u0000b\u202ec', note: 'x\r\ny\u0007' }] }));
    expect(result.ok && result.held.things[0]).toMatchObject({ title: 'abc', note: 'x\ny' });
  });

  test('is never a reason to throw, whatever it holds', () => {
    const anything = fc.oneof(
      fc.uint8Array({ maxLength: 200 }),
      anyText(200).map((text) => bytesOf(text)),
      fc.json().map((text) => bytesOf(text)),
      fc.anything().map((value) => {
        try {
          return fileOf({ things: value });
        } catch {
          return fileOf({});
        }
      }),
    );
    fc.assert(
      fc.property(anything, (bytes) => {
        const result = read(bytes);
        if (!result.ok) expect(result.problem).toMatch(/^[A-Z\u201c].*\.$/s);
      }),
    );
  });
});

describe('a file that cannot be taken', () => {
  const at = (thing: object): string => problemOf(fileOf({ things: [{}, thing] }));

  test.each([
    [
      'a number for a text',
      { title: 5 },
      'Thing 2, \u201ctitle\u201d: a text in quotation marks is expected here, and 5 stands there.',
    ],
    [
      'a text for a number',
      { pad: '5' },
      'Thing 2, \u201cpad\u201d: a number is expected here, and \u201c5\u201d stands there.',
    ],
    [
      'a number out of range',
      { pad: 61 },
      'Thing 2, \u201cpad\u201d: 61 stands there; at most 60 is allowed.',
    ],
    [
      'another number out of range',
      { limit: -61 },
      'Thing 2, \u201climit\u201d: -61 stands there; at least -60 is allowed.',
    ],
    [
      'an unknown code',
      { rule: 'lax' },
      'Thing 2, \u201crule\u201d: \u201clax\u201d stands there; one of simple or guardBand is expected.',
    ],
    [
      'null for a text',
      { note: null },
      'Thing 2, \u201cnote\u201d: a text in quotation marks is expected here, and nothing stands there.',
    ],
    [
      'an object for a list',
      { links: {} },
      'Thing 2, \u201clinks\u201d: a list in square brackets is expected here, and an object in braces stands there.',
    ],
    [
      'a wrong thing in a list',
      { links: [{}, { lossDb: [] }] },
      'Thing 2, link 2, \u201clossDb\u201d: a number is expected here, and a list stands there.',
    ],
    [
      'a list for a record',
      { links: [[]] },
      'Thing 2, link 1: an object in braces is expected here, and a list stands there.',
    ],
    [
      'a text that is too long',
      { title: 'x'.repeat(41) },
      'Thing 2, \u201ctitle\u201d: the text has 41 letters, and at most 40 fit.',
    ],
    [
      'too many records',
      { links: Array.from({ length: 25 }, () => ({})) },
      'Thing 2, \u201clinks\u201d: 25 are too many: at most 24 fit.',
    ],
    [
      'too many records before it looks at any',
      { links: Array.from({ length: 25 }, () => 7) },
      'Thing 2, \u201clinks\u201d: 25 are too many: at most 24 fit.',
    ],
  ])('tells %s with its place', (_what, thing, sentence) => {
    expect(at(thing)).toBe(sentence);
  });

  test('tells the first fault only', () => {
    expect(problemOf(fileOf({ things: [{ pad: 'a' }, { title: 1 }] }))).toMatch(/^Thing 1, .pad.:[^:]*$/);
  });

  test.each([{ thing: [] }, { thing: 'text' }, { thing: null }, { thing: 7 }])(
    'tells where $thing stands for a thing',
    ({ thing }) => {
      expect(problemOf(fileOf({ things: [thing] }))).toMatch(
        /^Thing 1: an object in braces is expected here/,
      );
    },
  );

  test.each([
    ['nothing', '', 'The file is empty.'],
    ['spaces', ' \n ', 'The file is empty.'],
    ['words', 'hello', 'The file is not one that was saved here: it is no JSON text.'],
    ['a table', 'Point,Readings\r\n1,7', 'The file is not one that was saved here: it is no JSON text.'],
    ['other JSON', '{"a": 1}', 'The file is JSON, but not one that was saved here.'],
    ['a list', '[1, 2]', 'The file is JSON, but not one that was saved here.'],
    ['null', 'null', 'The file is JSON, but not one that was saved here.'],
    ['a picture', '<svg xmlns="http://www.w3.org/2000/svg"/>', /^This is an SVG picture, not a file/],
    ['a page', '<!DOCTYPE html><p>file</p>', /^This is a web page/],
    ['an XML file', '<?xml version="1.0"?><a/>', /^This is an XML file/],
    ['rich text', '{\\rtf1 a}', /^This is a formatted text/],
  ])('of another kind is told: %s', (_what, text, sentence) => {
    expect(problemOf(bytesOf(text))).toEqual(
      typeof sentence === 'string' ? sentence : expect.stringMatching(sentence),
    );
  });

  test.each([
    [[0x89, 0x50, 0x4e, 0x47, 0x0d], 'a PNG picture'],
    [[0xff, 0xd8, 0xff, 0xe0], 'a JPEG picture'],
    [[0x25, 0x50, 0x44, 0x46, 0x2d], 'a PDF document'],
    [[0x50, 0x4b, 0x03, 0x04, 0], 'a ZIP archive, or a spreadsheet or document, which are archives too'],
    [[0x1f, 0x8b, 8], 'a compressed file'],
  ])('of another kind is told by its first bytes: %j', (bytes, kind) => {
    expect(problemOf(new Uint8Array(bytes))).toContain(`This is ${kind}, not`);
  });

  test('was cut off on its way, and says so', () => {
    const whole = textOf({ things: [{ ...defaults(), note: 'at some length' }] });
    expect(problemOf(bytesOf(whole.slice(0, -20)))).toMatch(/changed or cut off on its way/);
  });

  test('comes from a later version, and nothing is taken of it', () => {
    expect(problemOf(fileOf({ things: [{ pad: 'whatever it means then' }] }, 3))).toBe(
      'The file was made by a later version of this site: its format is 3, and this page reads up to 2. Nothing was changed; keep the file, and open it with the newer page.',
    );
  });

  test.each([undefined, 0, -1, 1.5, '2', null])('says no version that counts: %j', (version) => {
    expect(problemOf(fileOf({ things: [{}], version }))).toMatch(/does not say which version/);
  });

  test('has nothing in it', () => {
    expect(problemOf(fileOf({}))).toBe('There is nothing in the file.');
    expect(problemOf(fileOf({ things: [] }))).toBe('There is nothing in the file.');
  });

  test('is larger than 5 MB, and is refused before it is read', () => {
    expect(sizeProblem(LARGEST_FILE)).toBeUndefined();
    expect(sizeProblem(5_000_001)).toBe(
      'The file has 5.0\u00a0MB; files of up to 5.0\u00a0MB are opened here. Nothing was changed.',
    );
    expect(problemOf(new Uint8Array(6_200_000))).toContain('6.2\u00a0MB');
    expect(problemOf(new Uint8Array(123_000_000))).toContain('123\u00a0MB');
  });

  test('is not made either where it would be larger', () => {
    const column: FileForm = {
      version: 1,
      lists: {
        things: {
          readings: {
            type: 'text',
            key: 'r',
            label: 'Readings',
            maxLength: 40_000,
            lines: true,
            default: '',
          },
        },
      },
    };
    const things = Array.from({ length: 20 }, () => ({ readings: '7.12345\n'.repeat(40_000) }));
    const written = writeFile(column, { things }, SAVED);
    expect(written.ok ? '' : written.problem).toMatch(/would make a file of .*MB/);
    expect(writeFile(column, { things: things.slice(0, 3) }, SAVED).ok).toBe(true);
  });
});

function defaults() {
  const result = read(fileOf({ things: [{}] }));
  if (!result.ok) throw new Error(result.problem);
  const [thing] = result.held.things;
  if (thing === undefined) throw new Error('defaults: wish a thing');
  return thing;
}

describe('what means nothing here', () => {
  test('is left out and named with its place', () => {
    const result = read(fileOf({ colour: 1, things: [{ pad: 3, shape: 'x', links: [{ odd: [] }] }] }));
    expect(result.ok && result.notes).toEqual([
      '\u201ccolour\u201d means nothing here and was left out.',
      'Thing 1, \u201cshape\u201d means nothing here and was left out.',
      'Thing 1, link 1, \u201codd\u201d means nothing here and was left out.',
    ]);
    expect(result.ok && Object.keys(result.held.things[0] ?? {})).toEqual(Object.keys(fields));
  });

  test('is counted where there is much of it', () => {
    const many = (length: number) =>
      Object.fromEntries(Array.from({ length }, (_, index) => [`k${index}`, 1]));
    const result = read(fileOf({ things: [many(500)] }));
    expect(result.ok && result.notes).toHaveLength(11);
    expect(result.ok && result.notes.at(-1)).toBe('490 more things in the file mean nothing here.');
    const one = read(fileOf({ things: [many(11)] }));
    expect(one.ok && one.notes.at(-1)).toBe('One more thing in the file means nothing here.');
  });

  test.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])(
    'changes no object of the page, not even as %s',
    (key) => {
      const text = `{"file":"how-sure-is-a-watt","version":2,"${key}":{"polluted":1},"things":[{"${key}":{"polluted":1},"pad":4,"links":[{"${key}":{"polluted":1}}]}]}`;
      const result = read(bytesOf(text));
      expect(result.ok && result.held.things[0]?.pad).toBe(4);
      expect(result.ok && result.notes).toHaveLength(3);
      expect('polluted' in {}).toBe(false);
      const thing: object = result.ok ? (result.held.things[0] ?? {}) : {};
      expect('polluted' in thing).toBe(false);
      expect(Object.getPrototypeOf(thing)).toBe(Object.prototype);
    },
  );
});

describe('an older file', () => {
  const newer: FileForm = {
    ...form,
    version: 3,
    older: {
      2: (list, thing) =>
        list === 'things' && typeof thing === 'object' && thing !== null && 'attenuator' in thing
          ? { pad: thing.attenuator }
          : thing,
    },
  };

  test('is brought up to the present version', () => {
    const result = readFile(newer, fileOf({ things: [{ attenuator: -6 }] }, 2));
    expect(result.ok && result.held.things?.[0]).toMatchObject({ pad: -6 });
    expect(result.ok && result.notes).toEqual([]);
  });

  test('is told where nobody knows how', () => {
    const result = readFile(newer, fileOf({ things: [{}] }, 1));
    expect(result.ok ? '' : result.problem).toBe('Format 1 cannot be read here.');
  });
});
