import { coverageText } from '../../text/probability-text.ts';
import { dbText } from '../../text/quantity-text.ts';
import { type BudgetLine, budgetLines, freedomText } from '../budget.ts';
import type { BenchResult } from '../result.ts';
import { resultStrings } from '../result-strings.ts';
import { halfWidthText } from '../result-words.ts';

const strings = resultStrings.budget;

/** Columns in their order; those of figures stand right-aligned. */
const COLUMNS = [
  ['loss', true],
  ['stated', false],
  ['source', false],
  ['distribution', false],
  ['divisor', true],
  ['uncertainty', true],
  ['sensitivity', true],
  ['contribution', true],
  ['share', true],
  ['freedom', true],
] as const satisfies readonly (readonly [keyof BudgetLine, boolean])[];

/** The table of links and the uncertainty budget in one. */
export function BudgetPart({ result }: { result: BenchResult }) {
  return (
    <section aria-labelledby="budget">
      <h2 id="budget">{strings.heading}</h2>
      <section class="scroll" aria-label={strings.region} tabIndex={0}>
        <table class="budget">
          <caption>{strings.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{strings.part}</th>
              {COLUMNS.map(([name, isNumber]) => (
                <th key={name} scope="col" class={isNumber ? 'number' : undefined}>
                  {strings[name]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {budgetLines('shown', result).map((line) => (
              <tr key={line.id}>
                <th scope="row">{line.label}</th>
                {COLUMNS.map(([name, isNumber]) => (
                  <td key={name} class={isNumber ? 'number' : undefined}>
                    {line[name]}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
          <BudgetFoot result={result} />
        </table>
      </section>
    </section>
  );
}

function BudgetFoot({ result: { chain } }: { result: BenchResult }) {
  const { standardUncertainty, degreesOfFreedom, coverageFactor, coverageProbability, expanded } =
    chain.result.propagation;
  const coverage = coverageText('shown', { factor: coverageFactor, probability: coverageProbability });
  return (
    <tfoot>
      <tr>
        <th scope="row" colSpan={8}>
          {strings.combined}
        </th>
        <td class="number">{dbText('shown', { db: standardUncertainty, decimals: 4 })}</td>
        <td />
        <td class="number">{freedomText('shown', degreesOfFreedom)}</td>
      </tr>
      <tr>
        <th scope="row" colSpan={8}>
          {strings.expanded(coverage)}
        </th>
        <td class="number">{halfWidthText('shown', expanded)}</td>
        <td colSpan={2} />
      </tr>
    </tfoot>
  );
}
