import type { PointResult } from '../results/point-result.ts';
import { cautionsAt, cautionsElsewhere, type NamedResult } from '../words/caution-elsewhere.ts';
import { cautionStrings as strings } from '../words/caution-strings.ts';
import { cautionBasis, cautionWords, methodOf } from '../words/caution-words.ts';

/**
 * What the chain has to stand: always there, whatever else is folded or failing. Of the other points only what passes a limit is
 * told, each with its name.
 */
export function CautionsPart({ shown, others }: { shown: PointResult; others: readonly NamedResult[] }) {
  const { sheet } = shown;
  const { upper } = shown.inRange ? shown.result : shown;
  const words = [
    ...cautionWords('shown', { sheet, cautions: cautionsAt(shown) }),
    ...cautionsElsewhere('shown', shown, others).map((words) => ({ ...words, key: `other-${words.key}` })),
  ];
  const takesPower = sheet.links.some(({ lossDb }) => lossDb > 0);
  return (
    <section class="caution" aria-labelledby="cautions">
      <h2 id="cautions">{strings.heading}</h2>
      <p>
        <strong>{strings.load}</strong> {!takesPower && strings.noLoad} {strings.ofMethod[methodOf(sheet)]}
      </p>
      <ul>
        {words.map(({ key, text, exceeded }) => (
          <li key={key} class={exceeded ? 'problem' : undefined}>
            {text}
          </li>
        ))}
      </ul>
      <p class="small">
        {cautionBasis('shown', upper)} {strings.first}
      </p>
    </section>
  );
}
