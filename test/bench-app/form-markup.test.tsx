import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { controlId, linkPath, pointPath } from '../../src/bench/form/keys.ts';
import type { EntryProblem } from '../../src/bench/read/collector.ts';
import { SPECIFICATION_KEYS } from '../../src/bench/read/point-spec.ts';
import { DELIVERIES, KEYINGS, POWER_KINDS, SOURCES } from '../../src/bench/read/spec.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import type { BenchState } from '../../src/bench/state/state.types.ts';
import { strings } from '../../src/bench/strings.ts';
import { EntryForm } from '../../src/bench/views/EntryForm.tsx';
import { FORM_GROUPS } from '../../src/bench/views/LinkStatement.tsx';
import { RunningWords } from '../../src/bench/views/RunningWords.tsx';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import {
  blankLink,
  blankPoint,
  ENTRY_FORMS,
  type LinkEntries,
  type PointEntries,
  RULE_KINDS,
  type SheetEntries,
  SPECIFICATION_FORMS,
} from '../../src/sheet/entries.ts';
import { COLUMNS, COLUMNS_OF, METHODS, UNITS_OF } from '../../src/sheet/method.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';

const one = <Code extends string>(codes: readonly Code[]) => fc.constantFrom(...codes);
/** What people type, and what nobody should. */
const text = fc.oneof(
  fc.string(),
  fc.constantFrom('', '7', '7,1 dBm', '-20', '500 mW', '<b>&"', 'NaN', '1e999', '7\n8\n9\n99', '→'),
);
const textsOf = <Of extends object>(blank: Of, chosen: readonly (keyof Of)[]) =>
  fc.record(
    Object.fromEntries(
      Object.keys(blank)
        .filter((key) => !chosen.some((other) => other === key))
        .map((key) => [key, text]),
    ),
  );

const CHOSEN = [
  'id',
  'kind',
  'form',
  'unit',
  'percentOf',
  'source',
  'direction',
  'by',
  'part',
  'off',
  'assumed',
] as const;
const anyLink = fc
  .tuple(
    textsOf(blankLink(''), CHOSEN),
    fc.record({
      kind: one(LINK_KINDS),
      form: one(ENTRY_FORMS),
      unit: one(Object.values(UNITS_OF).flat()),
      source: one(SOURCES),
      off: fc.boolean(),
      assumed: fc.boolean(),
    }),
  )
  .map(([typed, codes]): LinkEntries => ({ ...blankLink(''), ...typed, ...codes }));
const anyPoint = fc
  .tuple(
    textsOf(blankPoint(''), ['id', 'specification']),
    fc.record({ specification: one(SPECIFICATION_FORMS) }),
  )
  .map(([typed, codes]): PointEntries => ({ ...blankPoint(''), ...typed, ...codes }));
const numbered = <Item extends { id: string }>(name: string, items: readonly Item[]): Item[] =>
  items.map((item, index) => ({ ...item, id: `${name}${index + 1}` }));

const anySheet = fc
  .record({
    method: one(METHODS),
    title: text,
    plane: text,
    power: one(POWER_KINDS),
    delivery: one(DELIVERIES),
    keying: one(KEYINGS),
    rule: one(RULE_KINDS),
    load: text,
    damage: text,
    scatter: text,
    points: fc.array(anyPoint, { minLength: 1, maxLength: 3 }),
    links: fc.array(anyLink, { maxLength: 3 }),
    changes: fc.array(
      fc.record({ at: text, what: one(['rule', 'point1']), from: text, to: text, reason: text }),
      {
        maxLength: 2,
      },
    ),
  })
  .map(
    ({ changes, points, links, ...own }): SheetEntries => ({
      ...blankSheet(own.method),
      ...own,
      points: numbered('point', points),
      links: numbered('link', links),
      log: { lockedAt: changes[0]?.at ?? '', changes },
    }),
  );

const measurement = measurementOf(clubSheet());
const result = pointResult(measurement, 'point1');

const stateOf = (entries: SheetEntries, problems: readonly EntryProblem[] = []): BenchState => ({
  entries,
  problems,
  measurement,
  measured: 0,
  point: 'point1',
  before: undefined,
  lastPath: undefined,
  held: undefined,
  sheet: 0,
  sheets: 0,
  past: [],
  future: [],
  addressProblems: [],
  showLimits: true,
  showCurve: false,
});
const markup = (entries: SheetEntries, problems: readonly EntryProblem[] = []): string =>
  render(
    <EntryForm
      state={stateOf(entries, problems)}
      running={<RunningWords result={result} own stale={problems.length > 0} />}
      changed={false}
      mayWait={false}
      drawing={0}
      send={() => {}}
    />,
  );
const all = (html: string, pattern: RegExp): readonly string[] =>
  [...html.matchAll(pattern)].map(([, group]) => group ?? '');

describe('the entry form, whatever was typed', () => {
  it('is drawn with every id once, and nothing that points at an id that is missing', () => {
    fc.assert(
      fc.property(anySheet, (entries) => {
        const html = markup(entries);
        const ids = all(html, /\sid="([^"]+)"/g);
        expect(new Set(ids).size).toBe(ids.length);
        const wanted = all(html, /\s(?:for|list|aria-labelledby|aria-describedby)="([^"]+)"/g).flatMap(
          (value) => value.split(' '),
        );
        expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('gives every control a label, and asks for no style of its own', () => {
    fc.assert(
      fc.property(anySheet, (entries) => {
        const html = markup(entries);
        const labelled = all(html, /<label[^>]*\sfor="([^"]+)"/g);
        const within = all(html, /<label[^>]*><input[^>]*\sid="([^"]+)"/g);
        const bare = [...html.matchAll(/<(?:input|select|textarea)\b[^>]*>/g)].filter(([tag]) => {
          const id = /\sid="([^"]+)"/.exec(tag)?.[1];
          return id === undefined || !(labelled.includes(id) || within.includes(id));
        });
        expect(bare).toEqual([]);
        expect(html).not.toMatch(/\sstyle=/);
      }),
      { numRuns: 60 },
    );
  });
});

describe('each method', () => {
  it.each(METHODS)('%s asks for its own readings, and says what to be careful of', (method) => {
    const html = markup(blankSheet(method));
    for (const column of COLUMNS)
      expect(html.includes(`id="${controlId(pointPath('point1', column))}"`), column).toBe(
        COLUMNS_OF[method].some((own) => own === column),
      );
    expect(html).toContain(strings.setup.methods[method].caution);
  });
});

describe('each form', () => {
  it.each(SPECIFICATION_FORMS)('of a specification, %s, asks for its own numbers', (specification) => {
    const html = markup({
      ...blankSheet('padsIntoMeter'),
      points: [{ ...blankPoint('point1'), specification }],
    });
    for (const key of SPECIFICATION_KEYS[specification])
      expect(html).toContain(`id="${controlId(pointPath('point1', key))}"`);
  });

  it('of a statement is offered once, under where it is found', () => {
    const offered = FORM_GROUPS.flatMap(({ options }) => options);
    expect([...offered].sort()).toEqual([...ENTRY_FORMS].sort());
  });
});

describe('what needs telling', () => {
  const pad = { ...blankLink('pad'), label: 'Pad' };
  const sheet = (link: Partial<LinkEntries>): SheetEntries => ({
    ...blankSheet('padsIntoMeter'),
    links: [{ ...pad, ...link }],
  });

  it('is that a link is left out, or was brought by the method', () => {
    expect(markup(sheet({}))).not.toContain(strings.link.offNote);
    expect(markup(sheet({ off: true }))).toContain(strings.link.offNote);
    expect(markup(sheet({ assumed: true }))).toContain(strings.link.assumedMark);
  });

  it('is a problem beside its field, unfolded where it is folded away', () => {
    const path = linkPath('pad', 'rated');
    const html = markup(sheet({ rated: 'lots' }), [{ path, label: 'Rated power', problem: 'No power.' }]);
    expect(html).toMatch(new RegExp(`id="${controlId(path)}-problem">No power\\.`));
    expect(html).toMatch(/<details class="folded link-more" open/);
    expect(markup(sheet({}))).not.toMatch(/<details[^>]* open/);
  });

  it('is since when the agreement is locked, and every change of it with a field for the reason', () => {
    const at = '2026-11-25T03:12:00.000Z';
    const change = { at, what: 'point1', from: '27 dBm', to: '28 dBm', reason: 'a slip' };
    const html = markup({ ...sheet({}), log: { lockedAt: at, read: ['point1'], changes: [change] } });
    expect(html).toContain(strings.point.lock.since('2026-11-25, 03:12 UTC'));
    expect(html).toContain(
      strings.point.lock.change({ time: '2026-11-25, 03:12 UTC', from: '27 dBm', to: '28 dBm' }),
    );
    expect(html).toContain('value="a slip"');
    expect(markup(sheet({}))).toContain(strings.point.lock.open);
  });

  it('is which point is pressed, once there are several', () => {
    const points = [blankPoint('point1'), { ...blankPoint('point2'), label: 'Upper end' }];
    const html = markup({ ...sheet({}), points });
    expect(all(html, /aria-pressed="(true|false)"/g)).toEqual(['true', 'false']);
    expect(html).toContain('Upper end');
    expect(markup(sheet({}))).not.toContain('aria-pressed');
  });
});
