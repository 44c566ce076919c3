import { pictureStrings as strings } from '../bench/export/picture-strings.ts';
import { type Picture, standalonePicture } from '../exchange/picture.ts';
import { resolveStyles, stripPage } from '../exchange/resolve-styles.ts';
import { styleRules } from '../exchange/style-rules.ts';
import figures from '../styles/figures.css?raw';
import lineBand from '../styles/line-band.css?raw';
import plots from '../styles/plot-drawing.css?raw';
import rulers from '../styles/rulers.css?raw';
import { light } from '../styles/tokens.ts';

/** What is drawn around the figure that a page shows. */
export interface ShownWords {
  readonly title: string;
  readonly assumptions: readonly string[];
  /** Where the page is found, with the state that its address carries, without `https://`. */
  readonly address: string;
  /** Version of the site that worked it out. */
  readonly version: string;
}

const textOf = (element: Element | null): string => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();

/** The figure's own answers, as they stand: they follow what the reader has set, as the drawing does. The first one's number leads. */
function answersIn(
  figure: Element,
): { readonly result: string; readonly above: readonly string[] } | undefined {
  const [first, ...others] = [...figure.querySelectorAll('.answers > div')].map((answer) => ({
    number: textOf(answer.querySelector('dt')),
    words: textOf(answer.querySelector('dd')),
  }));
  if (first === undefined) return undefined;
  return {
    result: first.number,
    above: [first.words, ...others.map(({ number, words }) => `${number}: ${words}`)],
  };
}

/** The drawing that is in sight; a figure may hold one for wide places and one for narrow. */
function largestIn(figure: Element): SVGSVGElement {
  const drawings = [...figure.querySelectorAll<SVGSVGElement>('svg[viewBox]')];
  const [first, ...rest] = drawings;
  if (first === undefined) throw new RangeError('shownFigure: the figure must have a drawing, got none');
  return rest.reduce(
    (most, one) => (one.viewBox.baseVal.width > most.viewBox.baseVal.width ? one : most),
    first,
  );
}

/**
 * The figure of a page as it stands, as a picture that stands alone: what the reader changed is in it. Needs a document; the reader's own
 * theme plays no part. @throws RangeError for a figure without a drawing.
 */
export function shownFigure(figure: Element, { title, assumptions, address, version }: ShownWords): Picture {
  const copy = figure.cloneNode(true) as Element;
  const drawing = largestIn(copy);
  resolveStyles(copy, styleRules([figures, plots, rulers, lineBand].join('\n'), light));
  stripPage(drawing);
  const writer = new XMLSerializer();
  const markup = [...drawing.children].map((child) => writer.serializeToString(child)).join('');
  const { width, height } = drawing.viewBox.baseVal;
  const { result, above } = answersIn(figure) ?? { result: title, above: [] };
  const below = [strings.assumed(assumptions), strings.made({ address, version })];
  return standalonePicture({ title, result, above, below }, { markup, width, height }, light);
}
