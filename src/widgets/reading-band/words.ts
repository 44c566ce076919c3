import { levelDbm, levelToPower } from '#compute';
import { amountOf, withLinkAmount } from '../../sheet/amount.ts';
import { type BandChain, bandChainOf } from '../../sheet/chain.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerText, powerWithEndsText } from '../../text/power-text.ts';
import { levelText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { strings } from './strings.ts';

const watts = (level: number): number => levelToPower(levelDbm(level));

/** Level with its expanded uncertainty: `27.10 dBm ±0.69 dB`. */
export function levelAnswer(style: Style, { result }: BandChain): string {
  const { expanded } = result.propagation;
  if (expanded === 0) return levelText(style, { levelDbm: result.estimate, decimals: 2 });
  const decimals = Math.min(Math.max(decimalsFor(expanded), 0), 4);
  const half = plusMinusText(style, { halfWidth: expanded, decimals, unit: 'dB' });
  return `${levelText(style, { levelDbm: result.estimate, decimals })} ${half}`;
}

/** The same in watts, its ends unequal: `513 mW, 438 to 601`. */
export function wattsAnswer(style: Style, { result }: BandChain): string {
  const { lower, upper } = result.propagation.interval;
  if (upper <= lower) return powerText(style, { powerW: watts(result.estimate), digits: 3 });
  return powerWithEndsText(style, {
    powerW: watts(result.estimate),
    lowerW: watts(lower),
    upperW: watts(upper),
  });
}

/** What widens the band most, and what halving it would leave. */
function dominantAnswer(style: Style, chain: BandChain): Answer {
  const links = chain.sheet.links.filter(({ id }) => chain.dominantIds.includes(id));
  const [link] = links;
  if (link === undefined) return { figure: strings.nothingWidens, words: strings.nothingWidensWords };
  const share = Math.max(...chain.result.propagation.budget.map((row) => row.share));
  const halved = bandChainOf(withLinkAmount(chain.sheet, link.id, amountOf(link.statement) / 2)).result
    .propagation.expanded;
  const left = plusMinusText(style, { halfWidth: halved, decimals: decimalsFor(halved), unit: 'dB' });
  return {
    figure: strings.widensMost(links.map(({ said, label }) => (style === 'spoken' && said) || label)),
    words: (links.length > 1 ? strings.halvedOne : strings.halved)({
      share: percentText(style, { percent: 100 * share, decimals: 0 }),
      left,
    }),
  };
}

/** All three, for the page. */
export function answersOf(chain: BandChain): readonly Answer[] {
  const exact = chain.result.propagation.expanded === 0;
  return [
    {
      figure: levelAnswer('shown', chain),
      words: exact ? strings.exact : strings.expanded(COVERAGE_FACTOR),
    },
    { figure: wattsAnswer('shown', chain), words: exact ? strings.same : strings.lopsided },
    dominantAnswer('shown', chain),
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(chain: BandChain): string {
  const { figure } = dominantAnswer('spoken', chain);
  return `${levelAnswer('spoken', chain)}, ${wattsAnswer('spoken', chain)}. ${figure}.`;
}
