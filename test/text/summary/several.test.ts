import { describe, expect, test } from 'vitest';
import { judge, type Rule, type Specification } from '#compute';
import {
  asBbcode,
  asMarkdown,
  asPlainText,
  asSentence,
  asUnicodeText,
} from '../../../src/text/summary/format.ts';
import type { Summary } from '../../../src/text/summary/piece.ts';
import { type SummaryInput, summarise } from '../../../src/text/summary/summarise.ts';
import { COLUMNS } from '../../../src/text/summary/wrap.ts';
import { timeText } from '../../../src/text/time-text.ts';
import { inputOf, parts } from './demonstration.ts';

const GUARD: Rule = { kind: 'guardBand', multiplier: 1 };
const narrow = parts.map((part) => ({
  ...part,
  statement: { form: 'limits', shape: 'rectangular', halfWidth: 0.05 } as const,
}));

/** The demonstration judged against the maximum of a licence. */
function licensed(upper: number, rule: Rule = GUARD): SummaryInput {
  const input = inputOf(narrow);
  const specification: Specification = { upper };
  const judgement = judge({ result: input.result, specification, rule });
  return { ...input, judged: { specification, rule, judgement, licence: true } };
}
const plainly = (text: string): string =>
  text.replaceAll('\u00a0', ' ').replaceAll('\u2212', '-').replaceAll('\u2019', "'");
const verdictOf = (input: SummaryInput): string =>
  plainly(asSentence('shown', summarise(input), ['verdict']));

describe('the verdict on a licence', () => {
  test('never says that a power is legal: at most that it was not shown to exceed', () => {
    expect(verdictOf(licensed(30))).toMatch(
      /^Licence at most 30 dBm: not shown to exceed the licence's maximum, and shown to keep to it as far as the rule asks \(guard band of 1 times U; /,
    );
    expect(verdictOf(licensed(26))).toMatch(/^Licence at most 26 dBm: exceeds the licence's maximum \(/);
    expect(verdictOf(licensed(26.85))).toMatch(
      /^Licence at most 26\.85 dBm: can't tell: not shown to exceed .*, and not shown to keep/,
    );
    for (const upper of [20, 26, 26.8, 26.85, 27, 30])
      expect(verdictOf(licensed(upper))).not.toMatch(/legal|inside|specification/i);
  });

  test('keeps rule, deciding interval and probability, as any verdict does', () => {
    expect(verdictOf(licensed(30))).toMatch(
      /; decided by the whole distribution; probability of conformity more than 99\.9 %\)\.$/,
    );
    expect(verdictOf(licensed(30, { kind: 'probability', required: 0.95 }))).toContain(
      'required probability 95 %',
    );
  });

  test('says the limit as it was stated, to four decimals at most', () => {
    expect(verdictOf(licensed(36.9897))).toMatch(/^Licence at most 36\.9897 dBm:/);
    expect(verdictOf(licensed(30.5))).toMatch(/^Licence at most 30\.5 dBm:/);
  });
});

describe('the summaries of several points', () => {
  const at = (frequency: string, upper: number): SummaryInput => ({
    ...licensed(upper),
    what: `Power at ${frequency}`,
  });
  const points: readonly Summary[] = [at('3.58 MHz', 30), at('7.03 MHz', 26)].map(summarise);
  const together: Summary = { lines: points.flatMap(({ lines }) => lines), link: points[0]?.link };

  test('stand one after the other, each result before its verdict', () => {
    const kinds = together.lines.map(({ kind }) => kind);
    const results = kinds.flatMap((kind, index) => (kind === 'result' ? [index] : []));
    const verdicts = kinds.flatMap((kind, index) => (kind === 'verdict' ? [index] : []));
    expect(results).toHaveLength(2);
    expect((results[0] ?? 9) < (verdicts[0] ?? 0) && (verdicts[0] ?? 9) < (results[1] ?? 0)).toBe(true);
    expect(asSentence('spoken', together, ['result'])).toMatch(
      /^Power at 3\.58 MHz: .* Power at 7\.03 MHz: /,
    );
  });

  test('hold the same words in every form, and one address', () => {
    const forms = [asPlainText, asUnicodeText, asMarkdown, asBbcode].map((as) => as(together));
    for (const form of forms) {
      const text = form.replaceAll('\\', '').replace(/\n {2}/g, ' ');
      expect(text.match(/Licence at most \d+ dBm/g)).toEqual([
        'Licence at most 30 dBm',
        'Licence at most 26 dBm',
      ]);
      expect(text.match(/https:\/\//g)).toHaveLength(1);
    }
  });

  test('in plain text keep to 72 columns and to ASCII, but for the address that stays whole', () => {
    for (const row of asPlainText(together).split('\n')) {
      if (!row.startsWith('<')) expect(row.length).toBeLessThanOrEqual(COLUMNS);
      expect(row).toMatch(/^[ -~]*$/);
    }
  });
});

describe('a time of the log', () => {
  test('sorts as a text as it does as a time', () => {
    const times = [
      '2026-11-25T03:12:59Z',
      '2026-01-31T23:59:00Z',
      '2027-01-01T00:00:00.000Z',
      '2026-11-25T03:13:00Z',
    ];
    expect(times.map(timeText).toSorted()).toEqual(times.toSorted().map(timeText));
  });

  test('is cut to the minute, never rounded up to the next', () => {
    expect(timeText('2026-12-31T23:59:59.999Z')).toBe('2026-12-31, 23:59 UTC');
    expect(timeText('2026-02-03T04:05Z')).toBe('2026-02-03, 04:05 UTC');
  });

  test('is not made of what only looks like one', () => {
    for (const text of ['x2026-11-25T03:12:59Z', '26-11-25T03:12Z', '2026-11-25 03:12Z', '2026-11-25T3:12Z'])
      expect(timeText(text)).toBe(text);
  });
});
