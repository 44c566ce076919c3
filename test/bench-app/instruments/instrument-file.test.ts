import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetsInFile } from '../../../src/bench/export/sheet-file.ts';
import {
  instrumentFileForm,
  instrumentsAsFile,
  instrumentsInFile,
} from '../../../src/bench/instruments/instrument-file.ts';
import { readInstrument } from '../../../src/bench/instruments/read-instrument.ts';
import type { Known } from '../../../src/bench/instruments/take.ts';
import { LARGEST_FILE } from '../../../src/exchange/file-form.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { clubInstruments } from '../../../src/instruments/club.ts';
import { bytesOf, fileOf as fileOfVersion } from '../../exchange/demonstration.ts';
import { anyId, anyInstrument } from './any-instrument.ts';

const SAVED = '2026-05-09T10:00:00.000Z';
const fileOf = (content: object, version: unknown = 1): Uint8Array => fileOfVersion(content, version);
const id = (number: number): string => number.toString(16).padStart(24, '0');
const club: readonly Known[] = clubInstruments().map((value, index) => ({ id: id(index + 1), value }));

function textOf(instruments: readonly Known[]): string {
  const written = instrumentsAsFile(instruments, SAVED);
  if (!written.ok) throw new Error(written.problem);
  return written.text;
}

function opened(bytes: Uint8Array) {
  const read = instrumentsInFile(bytes);
  if (!read.ok) throw new Error(read.problem);
  return read;
}

function problemOf(bytes: Uint8Array): string {
  const read = instrumentsInFile(bytes);
  return read.ok ? 'none' : read.problem;
}

describe('instruments in a file', () => {
  it('come back letter by letter, whether they can be used or not', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ id: anyId, value: anyInstrument }), { minLength: 1, maxLength: 4 }),
        (instruments) => {
          expect(opened(bytesOf(textOf(instruments)))).toEqual({ ok: true, instruments, notes: [] });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('state the same when they are back: the whole invented set', () => {
    const { instruments } = opened(bytesOf(textOf(club)));
    expect(instruments).toEqual(club);
    for (const { value } of instruments) expect(readInstrument(value).problems).toEqual([]);
  });

  it('are a small file that a person can read, with what is as usual left out', () => {
    const text = textOf(club);
    expect(text.length).toBeLessThan(4000);
    const written = JSON.parse(text);
    expect(written).toMatchObject({ file: 'how-sure-is-a-watt', version: 1, saved: SAVED });
    expect(written.instruments[1]).toEqual({
      id: id(2),
      label: 'The meter that was lent',
      serial: 'no. 3 of the neighbouring club',
      amount: '0.25',
      notes: 'Invented for the demonstration. Its owner has the data sheet.',
    });
  });

  it('run nothing of hostile names and notes, and bring them back letter by letter', () => {
    const hostile = '<img src=x onerror=alert(1)> "=1+1" {{a}} \\u003cscript>';
    const value = { ...blankInstrument('pad'), label: hostile, notes: `${hostile}\n</script>` };
    expect(opened(bytesOf(textOf([{ id: id(1), value }]))).instruments[0]?.value).toEqual(value);
  });

  it('are never a reason to throw, whatever the list holds', () => {
    fc.assert(
      fc.property(fc.json(), (json) => {
        const read = instrumentsInFile(fileOf({ instruments: JSON.parse(json) }));
        if (!read.ok) expect(read.problem).toMatch(/^[A-Z\u201c].*\.$/s);
      }),
    );
  });
});

describe('a file of instruments that cannot be taken', () => {
  it.each([
    [
      { label: 5 },
      'Instrument 2, \u201clabel\u201d: a text in quotation marks is expected here, and 5 stands there.',
    ],
    [
      { kind: 'spoon' },
      'Instrument 2, \u201ckind\u201d: \u201cspoon\u201d stands there; one of meter, pad, cable, amplifier, load or other is expected.',
    ],
    [
      { basis: null },
      'Instrument 2, \u201cbasis\u201d: nothing stands there; one of dataSheet or calibration is expected.',
    ],
    [
      { notes: 'x'.repeat(4001) },
      'Instrument 2, \u201cnotes\u201d: the text has 4001 letters, and at most 4000 fit.',
    ],
    [
      { serial: 'x'.repeat(201) },
      'Instrument 2, \u201cserial\u201d: the text has 201 letters, and at most 200 fit.',
    ],
    [[], 'Instrument 2: an object in braces is expected here, and a list stands there.'],
  ])('tells its first fault with the place: %j', (thing, sentence) => {
    expect(problemOf(fileOf({ instruments: [{}, thing, { label: 7 }] }))).toBe(sentence);
  });

  it.each([
    ['words', bytesOf('hello'), /it is no JSON text\.$/],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47]), /^This is a PNG picture/],
    ['nothing', fileOf({ instruments: [] }), /^There is nothing in the file\.$/],
    [
      'a later version',
      fileOf({ instruments: [{ kind: 'what it means then' }] }, 2),
      /its format is 2, and this page reads up to 1\./,
    ],
    ['a file cut off', bytesOf(textOf(club).slice(0, -30)), /cut off on its way/],
    ['a file of 5.1 MB', new Uint8Array(LARGEST_FILE + 100_000), /^The file has 5\.1\u00a0MB/],
  ])('tells %s', (_what, bytes, sentence) => {
    expect(problemOf(bytes)).toMatch(sentence);
  });

  it('says where a file of sheets is opened, and the bench where one of instruments is, of any version', () => {
    expect(problemOf(fileOf({ sheets: [{}] }))).toMatch(
      /holds a sheet, not instruments: open it on the bench/,
    );
    expect(problemOf(fileOf({ sheets: [{}] }, 7))).toMatch(/open it on the bench/);
    expect(sheetsInFile(bytesOf(textOf(club)))).toEqual({
      ok: false,
      problem: expect.stringMatching(
        /holds instruments, not a sheet: open it on the page of your instruments/,
      ),
    });
    // one that holds both is opened where it is, and what is not of this page is named
    expect(opened(fileOf({ instruments: [{}], sheets: [{}] })).notes).toEqual([
      '\u201csheets\u201d means nothing here and was left out.',
    ]);
  });

  it.each(['__proto__', 'constructor', 'toString', 'colour'])('takes nothing of a field called %s', (key) => {
    const text = `{"file":"how-sure-is-a-watt","version":1,"instruments":[{"${key}":{"polluted":1},"kind":"pad"}]}`;
    const { instruments, notes } = opened(bytesOf(text));
    expect(notes).toEqual([`Instrument 1, \u201c${key}\u201d means nothing here and was left out.`]);
    const [first] = instruments;
    expect(Object.keys(first?.value ?? {}).sort()).toEqual(Object.keys(blankInstrument('pad')).sort());
    expect('polluted' in {}).toBe(false);
    expect('polluted' in (first?.value ?? {})).toBe(false);
  });
});

describe('files of instruments once saved', () => {
  const folder = new URL('../../corpus/instrument-files/', import.meta.url);
  const files = readdirSync(folder).map((name) => ({
    name,
    saved: JSON.parse(readFileSync(new URL(name, folder), 'utf8')),
  }));

  it.each(files)('$name opens for ever, with what is written beside it', ({ saved }) => {
    const { opens, ...content } = saved;
    const { instruments, notes } = opened(bytesOf(JSON.stringify(content)));
    expect(instruments).toMatchObject(opens);
    expect(notes).toEqual([]);
  });

  it('are there of every version', () => {
    const versions = new Set(files.map(({ saved }) => saved.version));
    expect([...versions].sort()).toEqual(
      Array.from({ length: instrumentFileForm().version }, (_, index) => index + 1),
    );
  });
});
