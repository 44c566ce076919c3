import type { CheapestChange, LinkHelp, LinkIds, OutcomeOfChange } from '#compute';
import { amountOf, withAmount } from '../../sheet/amount.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { addedShare, probabilityText } from '../../text/probability-text.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import { statementText } from '../../text/statement-text.ts';
import type { Style } from '../../text/style.ts';
import { inputLabel } from '../results/input-labels.ts';
import { halfWidthText } from '../words/result-words.ts';
import type { HelpLink, ReadingsHelp, Targets } from './help.ts';
import { helpStrings as strings } from './help-strings.ts';

/** What one change would leave, as text. */
export interface ChangeWords {
  /** Expanded uncertainty: `±0.45 dB`. */
  readonly expanded: string;
  readonly verdict: string;
  /** Empty where there is none. */
  readonly probability: string;
}

/** One link with what improving it would leave; undefined for what is not computed yet. */
export interface HelpLine {
  readonly key: string;
  readonly label: string;
  readonly share: string;
  readonly perfect: ChangeWords | undefined;
  readonly halved: ChangeWords | undefined;
  readonly replaced: ChangeWords | string | undefined;
}

/** A link's name, or the names of all that share its cause. */
export function linkName(sheet: Sheet, ids: LinkIds): string {
  const names = ids.map((id) => inputLabel(sheet, id));
  return names.length === 1 ? (names[0] ?? '') : `${names.join(' + ')} (${strings.together})`;
}

/** What a change would leave. */
export function changeWords(
  style: Style,
  { expanded, verdict, probabilityOfConformity }: Omit<OutcomeOfChange, 'interval'>,
): ChangeWords {
  return {
    expanded: halfWidthText(style, expanded),
    verdict: strings.verdicts[verdict],
    probability:
      probabilityOfConformity === undefined
        ? ''
        : strings.probable(probabilityText(style, addedShare(probabilityOfConformity))),
  };
}

/** One line of the table. */
export function helpLine(
  style: Style,
  { sheet, link, found }: { sheet: Sheet; link: HelpLink; found: LinkHelp | undefined },
): HelpLine {
  const words = (outcome: OutcomeOfChange | undefined): ChangeWords | undefined =>
    outcome && changeWords(style, outcome);
  return {
    key: link.ids.join(' '),
    label: linkName(sheet, link.ids),
    share: percentText(style, { percent: 100 * link.share, decimals: 0 }),
    perfect: words(found?.perfect),
    halved: words(found?.halved),
    replaced:
      link.better === 'unusable'
        ? strings.unusable
        : link.better === 'none'
          ? strings.noBetter
          : words(found?.replaced),
  };
}

/** A link brought down to less than this has to be perfect for all practical purposes. */
const ALL_BUT_PERFECT = 0.02;

/** The cheapest change as a sentence. */
export function cheapestWords(style: Style, sheet: Sheet, change: CheapestChange): string {
  if (change.kind === 'none') return strings.cheapest.none;
  const verdict = strings.verdicts[change.verdict];
  if (change.kind === 'decided') return strings.cheapest.decided(verdict);
  const link = linkName(sheet, change.link);
  if (change.factor < ALL_BUT_PERFECT) return strings.cheapest.perfect({ link, verdict });
  const percent = Math.floor(100 * change.factor);
  const factor = percentText(style, { percent, decimals: 0 });
  const stated = statedAt(style, sheet, change.link, percent / 100);
  return [
    strings.cheapest.change({ link, factor, verdict }),
    ...(stated === undefined ? [] : [strings.cheapest.stated(stated)]),
  ].join(' ');
}

/** What a single link would state if it were so much better, its last digit rounded down so that it still decides. */
function statedAt(style: Style, sheet: Sheet, ids: LinkIds, factor: number): string | undefined {
  const link = ids.length === 1 ? sheet.links.find(({ id }) => id === ids[0]) : undefined;
  if (link === undefined) return undefined;
  const amount = amountOf(link.statement) * factor;
  if (!(amount > 0)) return undefined;
  const unit = 10 ** (Math.floor(Math.log10(amount)) - 1);
  const rounded = Number((Math.floor(amount / unit + 1e-9) * unit).toPrecision(2));
  return statementText(style, { ...link, statement: withAmount(link.statement, rounded) });
}

/** Whether more readings would pay. */
export function readingsWords(style: Style, help: ReadingsHelp | undefined): string {
  const { readings } = strings;
  if (help === undefined) return readings.unknown;
  if (help.pay === undefined) return readings.every;
  const whole = (value: number): string => numberText(style, { value, decimals: 0 });
  const count = help.count === 1 ? readings.one : readings.several(whole(help.count));
  const scatter = dbText(style, { db: help.scatterDb, decimals: 3 });
  return help.pay <= help.count
    ? readings.enough({ count, scatter })
    : readings.more({ count, scatter, pay: whole(help.pay) });
}

/** How sure the measurement would have to be, and how sure it is. */
export function targetWords(style: Style, targets: Targets, expandedDb: number): readonly string[] {
  const { target } = strings;
  return [
    target.now(halfWidthText(style, expandedDb)),
    verdictTarget(style, targets),
    ...(targets.specificationDb === undefined
      ? []
      : [target.specification(halfWidthText(style, targets.specificationDb))]),
  ];
}

function verdictTarget(style: Style, { verdict: wanted }: Targets): string {
  const { target } = strings;
  if (wanted === undefined) return target.always;
  if (wanted.expanded === 0) return target.onLimit;
  const expanded = halfWidthText(style, wanted.expanded);
  return target.verdict({ expanded, verdict: strings.verdicts[wanted.verdict] });
}
