import { textOfValue } from '../lessons/values.ts';
import { bandChainOf } from '../sheet/chain.ts';
import { type Preset, presetSheet } from '../widgets/reading-band/presets.ts';
import { bandCard } from './chain-band.ts';
import type { CardContent } from './content.ts';
import { FIGURE_NAMES, type FigureName } from './figure-names.ts';
import { cardStrings as strings } from './strings.ts';

/** What a lesson's front matter says of its card. */
export type LessonCard =
  | {
      readonly value: string;
      readonly figure: string;
      readonly state?: string | undefined;
      readonly says: string;
    }
  | { readonly band: Preset };

export interface CardedLesson {
  /** `track/slug`. */
  readonly id: string;
  readonly title: string;
  readonly card: LessonCard;
}

/** A sentence with the numbers that it names by `{group.name}`: prose never has one typed by hand. */
const withValues = (says: string): string =>
  says.replace(/\{([\w.]+)\}/g, (_, id: string) => textOfValue(id));

/** The card of a lesson: its question, and a number of its own or the band of a prepared chain. @throws RangeError for an id that no value has. */
export function lessonCard({ id, title, card }: CardedLesson): CardContent {
  const key = `lesson-${id.split('/')[1]}`;
  if ('band' in card) return bandCard(bandChainOf(presetSheet(card.band)), { key, title });
  const [big, small] = [textOfValue(card.value), withValues(card.says)];
  const name = nameOf(card.figure);
  const drawn = { kind: 'figure', name, ...(card.state !== undefined && { given: card.state }) } as const;
  return { key, title, big, small, drawn, alt: strings.alt({ title, big, small }) };
}

function nameOf(figure: string): FigureName {
  const name = FIGURE_NAMES.find((candidate) => candidate === figure);
  if (name === undefined)
    throw new RangeError(
      `lessonCard: a card's figure must be one of ${FIGURE_NAMES.join(', ')}, got ${figure}`,
    );
  return name;
}
