import { figuresIn, type PlacedFigure } from './source/figures.ts';

/** Last part of the address at which a figure can be put into other pages, by its tag; one that was given out never changes. */
const SLUGS: Readonly<Record<string, string>> = {
  TwoMeansFigure: 'two-means',
  BandRulersFigure: 'band-rulers',
  EnvelopeFigure: 'envelope',
  TwoSignalsFigure: 'two-signals',
  LineFigure: 'level-line',
  StairsFigure: 'level-diagram',
  RatioFigure: 'ratio-ruler',
  TraceFigure: 'trace',
  RulesFigure: 'two-rules',
  UnitTreeFigure: 'unit-tree',
  MeterFigure: 'own-meter',
  BlocksFigure: 'gauge-blocks',
  LinkSumFigure: 'link-sum',
  RowFigure: 'pads-in-a-row',
  StatedFigure: 'stated-limits',
  BudgetFigure: 'budget',
  JoinedFigure: 'joined-meter',
  SharedFigure: 'shared-cause',
  VerdictFigure: 'verdict',
  DcHeatFigure: 'dc-heat',
  InLineFigure: 'in-line-meter',
  PadsFigure: 'pads-into-a-meter',
  ScopeFigure: 'oscilloscope',
  DetectorFigure: 'peak-detector',
  TriesFigure: 'tries',
  BorrowedFigure: 'borrowed',
  SpendFigure: 'where-to-spend',
  BackFigure: 'what-comes-back',
  ReadingsFigure: 'few-readings',
  ChainFigure: 'reading-band',
};

/** The slug of a figure: two ways of laying out the same one are two. @throws RangeError for a figure that has none. */
export function embedSlug({ tag, attributes }: Pick<PlacedFigure, 'tag' | 'attributes'>): string {
  const slug = Object.hasOwn(SLUGS, tag) ? SLUGS[tag] : undefined;
  if (slug === undefined) throw new RangeError(`embedSlug: a figure must have a slug, got ${tag}`);
  return typeof attributes.lay === 'string' ? `${slug}-${attributes.lay}` : slug;
}

/** A figure that other pages may show, with the lesson that it is from. */
export interface Embed<Lesson> {
  readonly slug: string;
  readonly figure: PlacedFigure;
  readonly lesson: Lesson;
}

/** The figures of the lessons, each once, from the first lesson that has it. */
export function embedsOf<Lesson extends { readonly body?: string | undefined }>(
  lessons: readonly Lesson[],
): readonly Embed<Lesson>[] {
  const all = new Map<string, Embed<Lesson>>();
  for (const lesson of lessons)
    for (const figure of figuresIn(lesson.body ?? '')) {
      const slug = embedSlug(figure);
      if (!all.has(slug)) all.set(slug, { slug, figure, lesson });
    }
  return [...all.values()];
}
