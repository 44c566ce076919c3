import type { LinkHelp } from '#compute';
import type { HelpLink } from '../help/help.ts';
import { helpStrings as strings } from '../help/help-strings.ts';
import { type ChangeWords, changeWords, helpLine } from '../help/help-words.ts';
import type { NumberedPoint } from '../results/point-result.ts';

interface HelpTableProps {
  readonly shown: NumberedPoint;
  readonly links: readonly HelpLink[];
  /** As far as they are computed, in the order of the links. */
  readonly rows: readonly LinkHelp[];
}

const CHANGES = ['perfect', 'halved', 'replaced'] as const;

/** For each link what it would leave if it were perfect, half as wrong, or the reader's better part. */
export function HelpTable({ shown, links, rows }: HelpTableProps) {
  const { sheet } = shown;
  const { chain, judgement } = shown.result;
  const now = changeWords('shown', { ...judgement, expanded: chain.result.propagation.expanded });
  const replaces = links.some(({ better }) => better !== 'none');
  const changes = CHANGES.filter((change) => change !== 'replaced' || replaces);
  return (
    <section class="scroll" aria-label={strings.region} tabIndex={0}>
      <table class="help-table">
        <caption>{strings.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{strings.link}</th>
            <th scope="col" class="number">
              {strings.share}
            </th>
            {changes.map((change) => (
              <th key={change} scope="col">
                {strings[change]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{strings.asItIs}</th>
            <td class="help-empty" />
            <td colSpan={changes.length}>
              <Change words={now} />
            </td>
          </tr>
          {links.map((link, index) => {
            const line = helpLine('shown', { sheet, link, found: rows[index] });
            return (
              <tr key={line.key}>
                <th scope="row">{line.label}</th>
                <td class="number" data-label={strings.share}>
                  {line.share}
                </td>
                {changes.map((change) => (
                  <td
                    key={change}
                    data-label={strings[change]}
                    class={line[change] === '' ? 'help-empty' : undefined}
                  >
                    <Change words={line[change]} />
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** Expanded uncertainty, below it verdict and probability. */
function Change({ words }: { words: ChangeWords | string | undefined }) {
  if (words === undefined) return <>{strings.waiting}</>;
  if (typeof words === 'string') return <>{words}</>;
  return (
    <>
      <strong>{words.expanded}</strong>
      <br />
      {[words.verdict, words.probability].filter((part) => part !== '').join('; ')}
    </>
  );
}
