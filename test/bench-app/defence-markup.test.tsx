import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { checkPath, controlId } from '../../src/bench/form/keys.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { CHECK_FIELDS, CHECKS_OF } from '../../src/bench/validity/check-kinds.ts';
import { checkStrings } from '../../src/bench/validity/check-strings.ts';
import { validityStrings } from '../../src/bench/validity/validity-strings.ts';
import { BetterField } from '../../src/bench/views/BetterField.tsx';
import { ChecksCaution } from '../../src/bench/views/ChecksCaution.tsx';
import { HelpFound } from '../../src/bench/views/HelpFound.tsx';
import { HelpPart } from '../../src/bench/views/HelpPart.tsx';
import { RecordPart } from '../../src/bench/views/RecordPart.tsx';
import { SimulationPart } from '../../src/bench/views/SimulationPart.tsx';
import { SimulationTry } from '../../src/bench/views/SimulationTry.tsx';
import { ValidityChecks } from '../../src/bench/views/ValidityChecks.tsx';
import { type DefenceProps, ValidityPart } from '../../src/bench/views/ValidityPart.tsx';
import { recordStrings } from '../../src/bench/words/record-strings.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { CHECK_KEYS, type CheckKey } from '../../src/sheet/check-keys.ts';
import { ENTRY_FORMS } from '../../src/sheet/entries.ts';
import { blankLink } from '../../src/sheet/link-entries.ts';
import { METHODS, type MethodKind } from '../../src/sheet/method.ts';
import { checkQuestion } from './check-question.ts';

/** What the parts get for a method, with these texts of its checks. */
function props(method: MethodKind, texts: Partial<Record<CheckKey, string>> = {}): DefenceProps {
  const { checks, measurement } = checkQuestion(method, texts);
  const points = measurement.points.map((point) => ({ ...point, frequencyHz: 3.58e6 }));
  const whole = { ...measurement, points };
  const entries = { ...blankSheet(method), checks };
  return {
    entries,
    problems: [],
    send: () => undefined,
    measurement: whole,
    shown: pointResult(whole, points[0]?.id ?? ''),
  };
}

const all = (of: DefenceProps): string =>
  render(
    <>
      <ChecksCaution {...of} />
      <ValidityPart {...of} />
      <ValidityChecks {...of} />
      <RecordPart {...of} own />
      <HelpPart {...of} />
      <HelpFound links={of.entries.links} shown={of.shown} open={true} />
      <SimulationPart {...of} />
      <SimulationTry {...of} />
    </>,
  );

const idsOf = (html: string): string[] => [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id ?? '');

const text = fc.oneof(fc.string(), fc.constantFrom('', '7', '<b>&"', '-20', '0', '7\n8', 'NaN', '1e999'));
const texts = fc.record(
  Object.fromEntries(CHECK_KEYS.map((key) => [key, text])) as Record<CheckKey, typeof text>,
);

describe('the parts that defend a result', () => {
  it('are drawn whatever was typed, each id once, without a style attribute', () => {
    fc.assert(
      fc.property(fc.constantFrom(...METHODS), texts, (method, typed) => {
        const html = all(props(method, typed));
        const ids = idsOf(html);
        expect(new Set(ids).size).toBe(ids.length);
        expect(html).not.toMatch(/ style=/);
      }),
      { numRuns: 40 },
    );
  });

  it('describe a control only by what is there', () => {
    for (const method of METHODS) {
      const html = all(props(method, { off: 'much', stepWith: '7' }));
      const ids = idsOf(html);
      for (const [, list = ''] of html.matchAll(/ aria-(?:describedby|labelledby)="([^"]*)"/g))
        for (const id of list.split(' ')) expect(ids).toContain(id);
    }
  });

  it('show a field for every text of a check that the method offers, and nothing of the others', () => {
    for (const method of METHODS) {
      const html = render(<ValidityChecks {...props(method)} />);
      const wanted = CHECKS_OF[method]
        .flatMap((check) => CHECK_FIELDS[check])
        .map((key) => controlId(checkPath(key)));
      expect(
        idsOf(html).filter((id) => id.startsWith('field-') && !/-(help|problem|note)$/.test(id)),
      ).toEqual(wanted);
    }
  });

  it('say what is wrong with a text beside its field, and keep it', () => {
    const html = render(<ValidityChecks {...props('padsIntoMeter', { off: 'much' })} />);
    expect(html).toContain('value="much"');
    expect(html).toMatch(/id="field-check-off-problem"/);
    expect(html).toContain('aria-invalid="true"');
    expect(html).toContain(checkStrings.faulty);
  });

  it('ask for a better part in the link itself, whatever its form, and say what is wrong with it there', () => {
    for (const form of ENTRY_FORMS) {
      const field = (better: string): string =>
        render(<BetterField link={{ ...blankLink('pad'), form, better }} send={() => undefined} />);
      expect(field('0,3')).not.toContain('aria-invalid');
      expect(field('')).not.toContain('aria-invalid');
      expect(field('good')).toMatch(/aria-invalid="true".*id="field-pad-better-problem"/s);
    }
  });

  it('rest folded at first, their insides not drawn', () => {
    const html = render(<ValidityPart {...props('inLine')} />);
    expect(html).toContain(validityStrings.fold);
    expect(html).not.toContain('<fieldset');
    expect(html).not.toContain(' open');
  });

  it('print a record also where nothing is noted and nothing checked', () => {
    const html = render(<RecordPart {...props('padsIntoMeter')} own />);
    expect(html).toContain(recordStrings.nothing);
    expect(html).toContain(recordStrings.notLocked);
    expect(html).toContain(recordStrings.noChecks);
  });

  it('print of checks whose words are not there yet, or not for this sheet, why they say nothing', () => {
    const made = props('padsIntoMeter', { off: '-60' });
    expect(render(<RecordPart {...made} own />)).toContain(recordStrings.checks.waiting);
    expect(render(<RecordPart {...made} own={false} />)).toContain(recordStrings.checks.notOwn);
  });
});
