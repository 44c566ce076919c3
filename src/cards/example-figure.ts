import { starts } from '../examples/starts.ts';
import type { CardFigure } from './content.ts';
import type { FigureName } from './figure-names.ts';

/** Examples whose figure begins with their numbers. */
type Started = Exclude<keyof typeof starts, 'pad-measured-at-dc'>;

const STARTED: Readonly<Record<Started, FigureName>> = {
  'load-forgotten': 'ScopeFigure',
  'beyond-the-bandwidth': 'ScopeFigure',
  'swr-of-a-whip': 'BackFigure',
  'keyed-and-spoken': 'EnvelopeFigure',
  'thirty-decibels-forgotten': 'StairsFigure',
};
/** Examples whose first result is drawn by itself: the page's figure shows others beside it. */
const OWN: Readonly<Record<string, FigureName>> = {
  'pad-measured-at-dc': 'voltages',
  'four-readings-one-limit': 'boards',
};

const isStarted = (slug: string): slug is Started => Object.hasOwn(STARTED, slug);

/** The figure of an example that is no chain, with its numbers. @throws RangeError for an example that has none. */
export function exampleFigure(slug: string): CardFigure {
  if (isStarted(slug)) return { kind: 'figure', name: STARTED[slug], given: starts[slug]() };
  const name = Object.hasOwn(OWN, slug) ? OWN[slug] : undefined;
  if (name === undefined) throw new RangeError(`exampleFigure: an example must have a figure, got ${slug}`);
  return { kind: 'figure', name };
}
