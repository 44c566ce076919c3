import { SITE_NAME } from '../text/site-name.ts';
import { inForm, TEXT_FORMS, textFormNames } from '../text/summary/forms.ts';
import { joined, type Line, line, type Summary } from '../text/summary/piece.ts';
import { wholeLine, worstLine } from '../text/summary/result-lines.ts';
import { summarise } from '../text/summary/summarise.ts';
import { evaluatedExample } from './evaluated.ts';
import type { ChainExample, Example, Outcome, SumExample } from './example.ts';
import { outcomeName } from './outcome-name.ts';

/** What a text says of the page that it is from. */
export interface Origin {
  /** Full address of the page. */
  readonly link: string;
  /** Version of the site that worked it out. */
  readonly version: string;
}

/** With what it was worked out: the version stays in texts that are quoted for years. */
const madeBy = (version: string): string => `${SITE_NAME} ${version}, invented data`;

/** An example's result as text to paste elsewhere, in the forms that mail, boards and forums take. */
export function exampleTexts(
  example: Example,
  { link, version }: Origin,
): readonly { readonly name: string; readonly text: string; readonly comma: string }[] {
  const summary = { lines: linesOf(example, madeBy(version)), link };
  return TEXT_FORMS.map((form) => {
    const [text, comma] = [inForm(form, summary), inForm(form, summary, 'comma')];
    return { name: textFormNames[form], text, comma };
  });
}

/** Result, what is known, the sum with its numbers, what decides, what is assumed: enough to check it without the page. */
const linesOf = (example: Example, made: string): readonly Line[] =>
  example.kind === 'chain' ? chainLines(example, made) : sumLines(example, made);

function chainLines(example: ChainExample, made: string): readonly Line[] {
  const { lines } = summaryOf(example, made);
  const before = lines.filter(({ kind }) => kind === 'result' || kind === 'whole');
  const after = lines.filter(({ kind }) => kind !== 'result' && kind !== 'whole');
  const named = new Set(example.known().map(({ what }) => what));
  const told = example.sheet().links.every(({ label }) => named.has(label));
  return [
    ...before,
    ...given(example),
    ...stepLines(example),
    ...(example.also?.() ?? []).map(outcomeLine),
    ...after.filter(({ kind }) => kind !== 'taken' || !told),
  ];
}

function summaryOf(example: ChainExample, made: string): Summary {
  const { sheet, chain, judgement } = evaluatedExample(example);
  return summarise({
    what: `${example.title}, ${sheet.measurand.plane}`,
    result: chain.result,
    unit: 'dBm',
    parts: sheet.links.map(({ id, label, lossDb, statement, unit }) => ({
      id,
      label,
      lossDb,
      stated: { statement, unit },
    })),
    judged: { specification: sheet.specification, rule: sheet.rule, judgement },
    assumptions: example.assumptions.map(unstopped),
    made,
  });
}

function sumLines(example: SumExample, made: string): readonly Line[] {
  const [first, ...others] = example.outcomes();
  if (first === undefined) throw new RangeError(`${example.slug}: an example must have an outcome, got none`);
  return [
    line('result', { foreign: `${example.title}. ${outcomeName(first)}` }, ': ', { sentence: first.value }),
    ...statedLines(first),
    ...others.map(outcomeLine),
    ...given(example),
    ...stepLines(example),
    line('dominant', { sentence: (style) => unstopped(example.dominates(style)) }),
    line(
      'assumes',
      'Assumed: ',
      ...joined(
        example.assumptions.map((assumption) => ({ foreign: unstopped(assumption) })),
        '; ',
      ),
    ),
    line('made', 'Worked out with ', { foreign: made }),
  ];
}

/** The other ways to add up, where the outcome is a measured value. */
function statedLines({ stated }: Outcome): readonly Line[] {
  if (stated === undefined) return [];
  return [wholeLine(stated), worstLine(stated, (id) => stated.labels[id] ?? id)];
}

const outcomeLine = (outcome: Outcome): Line =>
  line('result', { foreign: outcomeName(outcome) }, ': ', { sentence: outcome.value });

const given = (example: Example): readonly Line[] => [
  line(
    'known',
    'Given: ',
    ...joined(
      example.known().map(({ what, value }) => [{ foreign: what }, ' ', { sentence: value }]),
      '; ',
    ).flat(),
  ),
];

const stepLines = (example: Example): readonly Line[] =>
  example
    .steps()
    .map(({ title, formula }) =>
      line('sum', { foreign: title }, title.endsWith('?') ? ' ' : ': ', { sentence: formula }),
    );

/** On the page each is a sentence in a list; in the text they become parts of one. */
const unstopped = (sentence: string): string => sentence.replace(/\.$/, '');
