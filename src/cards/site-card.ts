import { bandChainOf } from '../sheet/chain.ts';
import { clubSheet } from '../sheet/club.ts';
import { levelAnswer, wattsAnswer } from '../widgets/reading-band/words.ts';
import { bandOf } from './chain-band.ts';
import type { CardContent } from './content.ts';
import { cardStrings as strings } from './strings.ts';

/** The card of every page that has none of its own: the club's hidden transmitter, as the first page shows it. */
export function siteCard(): CardContent {
  const chain = bandChainOf(clubSheet());
  const [big, small] = [levelAnswer('shown', chain), wattsAnswer('shown', chain)];
  const { title } = strings.site;
  return {
    key: 'site',
    title,
    big,
    small,
    drawn: bandOf(chain),
    alt: strings.bandAlt({ title, level: big, watts: small }),
  };
}
