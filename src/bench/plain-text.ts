import { mean } from '#compute';
import { READINGS_ID } from '../sheet/to-model.ts';
import { asPlainText } from '../text/summary/format.ts';
import { type Part, summarise } from '../text/summary/summarise.ts';
import { scatterStatement } from './budget.ts';
import type { BenchResult } from './result.ts';
import { resultStrings } from './result-strings.ts';

/**
 * The result as plain text that another person can check: value, intervals, raw data, what was taken for each part,
 * verdict with its rule, cautions, and the address that opens the same sheet.
 */
export function resultAsText({ chain, judgement, cautions }: BenchResult, link: string | undefined): string {
  const { sheet, result } = chain;
  const { power, plane, conditions } = sheet.measurand;
  const where = `${resultStrings.record.power[power]} ${plane}`.trim();
  const scatter = scatterStatement(sheet);
  const parts: readonly Part[] = [
    ...sheet.links.map(({ id, label, lossDb, statement, unit }) => ({
      id,
      label,
      lossDb,
      stated: { statement, unit },
    })),
    ...(scatter === undefined
      ? []
      : [
          {
            id: READINGS_ID,
            label: resultStrings.budget.scatter,
            stated: { statement: scatter, unit: 'dB' as const },
          },
        ]),
  ];
  const summary = summarise({
    what: `${sheet.title}, ${where}`,
    result,
    unit: 'dBm',
    parts,
    readings: { mean: mean(sheet.readings), count: sheet.readings.length, unit: 'dBm' },
    judged: { specification: sheet.specification, rule: sheet.rule, judgement },
    cautions: cautions.filter(({ code }) => code === 'padHeat' || code === 'inputLevel'),
    assumptions: [...(conditions === '' ? [] : [conditions]), resultStrings.copy.assumes],
    made: resultStrings.copy.made,
    ...(link !== undefined && { link }),
  });
  return asPlainText(summary);
}
