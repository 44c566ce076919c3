import { ShareBar } from '../../figures/ShareBar.tsx';
import type { Measurement } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';
import { coverageText } from '../../text/probability-text.ts';
import { dbText } from '../../text/quantity-text.ts';
import type { BenchResult } from '../results/result.ts';
import { type BudgetLine, budgetLines, freedomText } from '../words/budget.ts';
import { budgetStrings as strings } from '../words/budget-strings.ts';
import { halfWidthText } from '../words/result-words.ts';

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
export function BudgetPart({ result, links }: { result: BenchResult; links: Measurement['links'] }) {
  const off = links.filter((link) => link.off).map(({ label }) => isolated(label));
  const assumed = new Set(links.filter((link) => link.assumed).map(({ id }) => id));
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
              <Row key={line.id} line={line} isAssumed={assumed.has(line.id)} />
            ))}
          </tbody>
          <BudgetFoot result={result} />
        </table>
      </section>
      {off.length > 0 && <p>{strings.off(off.join(', '))}</p>}
    </section>
  );
}

const cellClass = (name: string, isNumber: boolean): string | undefined =>
  name === 'share' ? 'number share-cell' : isNumber ? 'number' : undefined;

function Row({ line, isAssumed }: { line: BudgetLine; isAssumed: boolean }) {
  return (
    <tr>
      <th scope="row">{line.label}</th>
      {COLUMNS.map(([name, isNumber]) => (
        <td key={name} class={cellClass(name, isNumber)}>
          {name === 'source' && isAssumed ? strings.assumed : line[name]}
          {name === 'share' && <ShareBar share={line.shareOf} />}
        </td>
      ))}
    </tr>
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
