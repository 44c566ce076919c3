import type { LinkEntries } from '../../sheet/entries.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { betterStrings } from '../form/better-strings.ts';
import { controlId, linkPath } from '../form/keys.ts';
import { hasUnit } from '../read/link-spec.ts';
import { readBetter } from '../read/read-link.ts';
import { strings } from '../strings.ts';
import { editLink, type LinkProps } from './LinkField.tsx';

/** What is wrong with the amount of a better part; it holds up no result, and so stands in no list of problems. */
export function betterProblem(link: LinkEntries): string | undefined {
  const field = readBetter(link);
  return field !== undefined && 'problem' in field ? field.problem : undefined;
}

/** The amount that a better part would have: what would help is worked out with it. */
export function BetterField({ link, send }: Pick<LinkProps, 'link' | 'send'>) {
  return (
    <TextField
      id={controlId(linkPath(link.id, 'better'))}
      label={strings.link.labels.better}
      value={link.better}
      help={helpOf(link)}
      problem={betterProblem(link)}
      inputMode="decimal"
      onText={(better) => send(editLink(link.id, 'better', { better }))}
    />
  );
}

function helpOf({ form }: LinkEntries): string {
  if (!hasUnit(form)) return betterStrings.decibels;
  return form === 'asymmetric' ? betterStrings.asymmetric : strings.link.help.better;
}
