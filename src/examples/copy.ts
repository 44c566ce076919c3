import { judge, mean } from '#compute';
import { chainOf } from '../sheet/evaluated-chain.ts';
import { inForm, TEXT_FORMS, textFormNames } from '../text/summary/forms.ts';
import { summarise } from '../text/summary/summarise.ts';
import type { Example } from './example.ts';

/** An example's result as text to paste elsewhere, in the forms that mail, boards and forums take. */
export function exampleTexts(
  example: Example,
  link: string,
): readonly { readonly name: string; readonly text: string }[] {
  const sheet = example.sheet();
  const { result } = chainOf(sheet);
  const summary = summarise({
    what: `${example.title}, ${sheet.measurand.plane}`,
    result,
    unit: 'dBm',
    parts: sheet.links.map(({ id, label, lossDb, statement, unit }) => ({
      id,
      label,
      lossDb,
      stated: { statement, unit },
    })),
    readings: { mean: mean(sheet.readings), count: sheet.readings.length, unit: 'dBm' },
    judged: {
      specification: sheet.specification,
      rule: sheet.rule,
      judgement: judge({ result, specification: sheet.specification, rule: sheet.rule }),
    },
    // On the page each is a sentence in a list; here they become parts of one.
    assumptions: example.assumptions.map((sentence) => sentence.replace(/\.$/, '')),
    made: 'How Sure Is a Watt? 0.1.0, invented data',
    link,
  });
  return TEXT_FORMS.map((form) => ({ name: textFormNames[form], text: inForm(form, summary) }));
}
