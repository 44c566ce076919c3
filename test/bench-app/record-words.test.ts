import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  agreementLines,
  calibrationLines,
  noteLines,
  RECORD_KEYS,
  recordLines,
} from '../../src/bench/words/record-words.ts';
import {
  blankLink,
  blankPoint,
  type LinkEntries,
  type LoggedChange,
  type PointEntries,
  type RecordEntries,
} from '../../src/sheet/entries.ts';

const notes = (texts: Partial<RecordEntries>): RecordEntries => ({
  by: '',
  date: '',
  instruments: '',
  certificates: '',
  supply: '',
  temperature: '',
  remarks: '',
  ...texts,
});

const change = (texts: Partial<LoggedChange>): LoggedChange => ({
  at: '2031-05-06T17:08:09.123Z',
  what: 'rule',
  from: 'guard band of 1 × U',
  to: 'simple acceptance',
  reason: '',
  ...texts,
});
const points = [{ ...blankPoint('point1'), label: '3.58 MHz' }, blankPoint('point2')];
const agreed = (changes: LoggedChange[], ofPoints = points) =>
  agreementLines('ascii', { log: { lockedAt: '2031-05-06T16:00:00.000Z', changes }, points: ofPoints });

describe('the notes of a record', () => {
  it('are the fields that say something, each on one line', () => {
    const lines = noteLines(notes({ by: ' M. ', instruments: 'pad no. 3\r\n\n meter, lent ' }));
    expect(lines).toEqual([
      { key: 'by', label: 'Measured by', text: 'M.' },
      { key: 'instruments', label: 'Instruments', text: 'pad no. 3; meter, lent' },
    ]);
    expect(noteLines(notes({}))).toEqual([]);
  });

  it('lose nothing that was typed but the breaks of lines', () => {
    fc.assert(
      fc.property(fc.constantFrom(...RECORD_KEYS), fc.string({ unit: 'grapheme' }), (key, text) => {
        const kept = (of: string): string => of.replace(/[\s;]/g, '');
        const [line] = noteLines(notes({ [key]: text }));
        expect(kept(line?.text ?? '')).toBe(kept(text));
        expect(line?.text ?? '').not.toMatch(/[\r\n]/);
      }),
    );
  });
});

describe('the log of what was agreed', () => {
  it('says when it was locked, or that it is not', () => {
    expect(agreementLines('ascii', { log: { lockedAt: '', changes: [] }, points })).toEqual([
      {
        key: 'agreed',
        label: 'Agreed',
        text: 'Specification and rule are not locked: no reading has been entered since the sheet was opened.',
      },
    ]);
    expect(agreed([])).toEqual([
      {
        key: 'agreed',
        label: 'Agreed',
        text: 'Specification and rule, locked at the first reading, 2031-05-06, 16:00 UTC; not changed since',
      },
    ]);
  });

  it('says at which points nothing has been read, so that they are still open', () => {
    const many = Array.from({ length: 6 }, (_, index) => blankPoint(`point${index + 1}`));
    const text = (read: readonly string[], ofPoints: readonly PointEntries[]): string | undefined =>
      agreementLines('ascii', {
        log: { lockedAt: '2031-05-06T16:00:00.000Z', read, changes: [] },
        points: ofPoints,
      })[0]?.text;
    expect(text(['point1'], points)).toMatch(/; still open, since nothing was read there: point 2$/);
    expect(text(['point2'], points)).toMatch(/: \u20683\.58 MHz\u2069$/);
    expect(text(['point1', 'point2'], points)).toMatch(/not changed since$/);
    expect(text(['point1'], many)).toMatch(/: point 2, point 3, point 4, and 2 more$/);
  });

  it('lists every change with time, from, to, and its reason or that none was given', () => {
    const lines = agreed([change({}), change({ what: 'point1', reason: 'typed wrong' })]);
    expect(lines.slice(1)).toEqual([
      {
        key: 'change0',
        label: 'Changed 2031-05-06, 17:08 UTC',
        text: 'rule: from "guard band of 1 × U" to "simple acceptance"; no reason given',
      },
      {
        key: 'change1',
        label: 'Changed 2031-05-06, 17:08 UTC',
        text: 'specification of \u20683.58 MHz\u2069: from "guard band of 1 × U" to "simple acceptance"; reason: typed wrong',
      },
    ]);
  });

  it('says whose specification it was, also of a point without a name or taken away', () => {
    const text = (what: string, ofPoints = points) => agreed([change({ what })], ofPoints)[1]?.text;
    expect(text('point2')).toMatch(/^specification of point 2: /);
    expect(text('point9')).toMatch(/^specification of a point that was taken away: /);
    expect(text('point1', points.slice(0, 1))).toMatch(/^specification: /);
    expect(agreed([change({ from: '' })])[1]?.text).toContain('from nothing to');
  });

  it('has as many lines as there are changes, and one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ reason: fc.string(), what: fc.string(), at: fc.string() })),
        (changes) => {
          expect(agreed(changes.map(change))).toHaveLength(changes.length + 1);
        },
      ),
    );
  });
});

describe('the days of calibration', () => {
  const pad = { ...blankLink('link1'), label: 'Pad A', calibrated: '2024-05-01', interval: '12' };
  const drift = { ...pad, id: 'link2', label: 'Pad A: drift', part: 'drift' as const };
  const lines = (date: string, links: readonly LinkEntries[] = [pad, drift, blankLink('link3')]) =>
    calibrationLines({ date, links });

  it('are told once for each instrument, with what was too old on the day of the measurement', () => {
    expect(lines('2026-05-09, evening')).toHaveLength(1);
    expect(lines('2026-05-09, evening')[0]).toMatchObject({
      label: 'Pad A',
      text: expect.stringContaining('on 2026-05-09 that is older than the 12 months'),
    });
    expect(lines('2024-06-01')[0]?.text).toContain('ends on 2025-05-01');
  });

  it('are told alone where nobody noted the day of the measurement, or where they are none', () => {
    expect(lines('')[0]?.text).toBe('Calibrated on 2024-05-01.');
    expect(lines('2026-05-09', [{ ...pad, calibrated: 'May' }])[0]?.text).toBe('Calibrated on May.');
  });
});

describe('the whole record', () => {
  it('is the notes and then the log', () => {
    const log = { lockedAt: '', changes: [] };
    const entries = { ...notes({ supply: '12.0 V' }), log, points, links: [] };
    expect(recordLines('ascii', entries).map(({ key }) => key)).toEqual(['supply', 'agreed']);
  });
});
