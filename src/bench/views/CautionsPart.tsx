import { cautionStrings as strings } from '../caution-strings.ts';
import { cautionBasis, cautionWords } from '../caution-words.ts';
import type { BenchResult } from '../result.ts';

/** What the chain has to stand: always there, whatever else is folded or failing. */
export function CautionsPart({ result }: { result: BenchResult }) {
  const { sheet, result: sums } = result.chain;
  const words = cautionWords('shown', { sheet, cautions: result.cautions });
  const takesPower = sheet.links.some(({ lossDb }) => lossDb > 0);
  return (
    <section class="caution" aria-labelledby="cautions">
      <h2 id="cautions">{strings.heading}</h2>
      <p>
        <strong>{strings.load}</strong> {!takesPower && strings.noLoad}
      </p>
      <ul>
        {words.map(({ key, text, exceeded }) => (
          <li key={key} class={exceeded ? 'problem' : undefined}>
            {text}
          </li>
        ))}
      </ul>
      <p class="small">{cautionBasis('shown', sheet, sums)}</p>
    </section>
  );
}
