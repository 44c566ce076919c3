import type { Example } from '../examples/example.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { levelAnswer, wattsAnswer } from '../widgets/reading-band/words.ts';
import { bandOf } from './chain-band.ts';
import type { CardContent } from './content.ts';
import { cardStrings as strings } from './strings.ts';

/** The card of a worked example: its level with the band, the same in watts end by end, and the band along its chain. */
export function exampleCard({ slug, title, sheet }: Pick<Example, 'slug' | 'title' | 'sheet'>): CardContent {
  const chain = bandChainOf(sheet());
  const [big, small] = [levelAnswer('shown', chain), wattsAnswer('shown', chain)];
  const alt = strings.bandAlt({ title: `${title}:`, level: big, watts: small });
  return { key: `example-${slug}`, title, big, small, band: bandOf(chain), alt };
}
