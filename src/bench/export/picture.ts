import { h, render } from 'preact';
import { type Picture, standalonePicture } from '../../exchange/picture.ts';
import { resolveStyles, stripPage } from '../../exchange/resolve-styles.ts';
import { styleRules } from '../../exchange/style-rules.ts';
import { ReadingBand } from '../../figures/ReadingBand.tsx';
import { measuresOf } from '../../figures/reading-band.frame.ts';
import { readingBandLayout } from '../../figures/reading-band.layout.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import css from '../../styles/figures.css?raw';
import { light } from '../../styles/tokens.ts';
import { type Decimal, styleWith } from '../../text/style.ts';
import { benchBand } from '../results/figure-rows.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { reachOfChain } from '../results/reach.ts';
import { pictureWords } from './picture-words.ts';

export interface PictureOptions {
  readonly address: string | undefined;
  /** Version of the site that worked it out. */
  readonly version: string;
  readonly assumes?: string;
  readonly showCurve: boolean;
  /** Decimal sign of every number in it; a point unless given. */
  readonly decimal?: Decimal;
}

/** The reading band of a point as a picture that stands alone. Needs a document; the reader's own theme plays no part. */
export function pictureOf(
  measurement: Measurement,
  shown: NumberedPoint,
  { showCurve, ...words }: PictureOptions,
): Picture {
  const { chain } = shown.result;
  const numbers = styleWith('shown', words.decimal ?? 'point');
  const options = { chain, showLimits: true, showCurve, handles: false, numbers };
  const band = { frame: 'wide' as const, numbers, ...benchBand(options, reachOfChain(chain)) };
  const { height } = readingBandLayout(band);
  const drawing = { markup: bandMarkup(band), width: measuresOf('wide').width, height };
  return standalonePicture(pictureWords(measurement, shown, words), drawing, light);
}

type Band = Omit<Parameters<typeof ReadingBand>[0], 'name' | 'description'>;

/** The inside of the figure with what its style sheet says in its own attributes. */
function bandMarkup(band: Band): string {
  const place = document.createElement('div');
  render(h(ReadingBand, { ...band, name: '', description: '' }), place);
  const figure = place.querySelector('svg');
  if (figure === null) throw new Error('bandMarkup: the figure must be drawn, got none');
  resolveStyles(figure, styleRules(css, light));
  stripPage(figure);
  const writer = new XMLSerializer();
  return [...figure.children].map((child) => writer.serializeToString(child)).join('');
}
