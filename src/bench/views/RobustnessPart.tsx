import type { BenchResult } from '../results/result.ts';
import { useSettled } from '../use-settled.ts';
import { resultStrings } from '../words/result-strings.ts';
import { type RobustnessLine, robustnessWords } from '../words/robustness-words.ts';

const strings = resultStrings.robustness;
const COLUMNS = [
  'taken',
  'interval',
  'verdict',
  'probability',
] as const satisfies readonly (keyof RobustnessLine)[];
/** Rows of the table, which stay while their text is being worked out. */
const ROWS = 6;

const pendingLine = (): RobustnessLine => ({
  taken: strings.pending,
  interval: '',
  verdict: '',
  probability: '',
});

const robustnessOf = (result: BenchResult) => robustnessWords('shown', result);

/** The verdict under other choices that could be defended. */
export function RobustnessPart({ result }: { result: BenchResult }) {
  const found = useSettled(result, robustnessOf);
  const lines = found?.lines ?? Array.from({ length: ROWS }, pendingLine);
  return (
    <section aria-labelledby="robustness" aria-busy={found === undefined}>
      <h2 id="robustness">{strings.heading}</h2>
      <p class="measure">
        {strings.intro} <strong>{found?.says ?? strings.pending}</strong>
      </p>
      <section class="scroll" aria-label={strings.region} tabIndex={0}>
        <table class="robustness">
          <caption>{strings.caption}</caption>
          <thead>
            <tr>
              {COLUMNS.map((name) => (
                <th key={name} scope="col">
                  {strings[name]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lines.map((line, index) => (
              <tr key={index}>
                <th scope="row">{line.taken}</th>
                <td>{line.interval}</td>
                <td>{line.verdict}</td>
                <td>{line.probability}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
