import { bandChainOf } from '../sheet/chain.ts';
import { clubSheet } from '../sheet/club.ts';
import { bandCard } from './chain-band.ts';
import type { CardContent } from './content.ts';
import { cardStrings as strings } from './strings.ts';

/** The card of every page that has none of its own: the club's hidden transmitter, as the first page shows it. */
export const siteCard = (): CardContent =>
  bandCard(bandChainOf(clubSheet()), { key: 'site', title: strings.site.title });
