import { useMemo } from 'preact/hooks';
import type { LinkEntries } from '../../sheet/entries.ts';
import { numberText } from '../../text/quantity-text.ts';
import { linkStrings } from '../form/link-strings.ts';
import { helpOf, readingsHelp, targetsOf } from '../help/help.ts';
import { helpStrings as strings } from '../help/help-strings.ts';
import { cheapestWords, readingsWords, targetWords } from '../help/help-words.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { HelpTable } from './HelpTable.tsx';
import { useHelp } from './use-help.ts';

interface HelpFoundProps<Shown> {
  readonly links: readonly LinkEntries[];
  readonly shown: Shown;
  readonly open: boolean;
}

/** What would help, or why nothing does. */
export function HelpFound({ shown, ...rest }: HelpFoundProps<PointResult>) {
  if (!shown.inRange) return <p>{strings.outOfRange}</p>;
  if (shown.result.chain.result.propagation.expanded === 0) return <p>{strings.exact}</p>;
  return <Found shown={shown} {...rest} />;
}

const whole = (value: number): string => numberText('shown', { value, decimals: 0 });

function Found({ links, shown, open }: HelpFoundProps<NumberedPoint>) {
  const help = useMemo(() => helpOf(shown, links), [shown, links]);
  const { rows, cheapest } = useHelp(help, open);
  const { expanded } = shown.result.chain.result.propagation;
  const [done, all] = [rows.length, help.links.length];
  return (
    <div class="help-found">
      <HelpTable shown={shown} links={help.links} rows={rows} />
      <p class="small">
        {done < all ? strings.progress({ done: whole(done), all: whole(all) }) : strings.computed}
      </p>
      <p class="small measure">{strings.betterHelp(linkStrings.more)}</p>
      <h3>{strings.cheapestHeading}</h3>
      <p class="measure cheapest" aria-busy={cheapest === undefined}>
        {cheapest === undefined ? strings.searching : cheapestWords('shown', shown.sheet, cheapest)}
      </p>
      <h3>{strings.readingsHeading}</h3>
      <p class="measure">{readingsWords('shown', readingsHelp(shown))}</p>
      <h3>{strings.targetHeading}</h3>
      <ul class="measure">
        {targetWords('shown', targetsOf(shown), expanded).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
