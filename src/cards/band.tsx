import { readFileSync } from 'node:fs';
import render from 'preact-render-to-string';
import { styleRules } from '../exchange/style-rules.ts';
import { ReadingBand } from '../figures/ReadingBand.tsx';
import type { BandMeasures } from '../figures/reading-band.frame.ts';
import { readingBandLayout } from '../figures/reading-band.layout.ts';
import { light } from '../styles/tokens.ts';
import type { CardBand } from './content.ts';
import { outlineOf, widthOf } from './face.ts';

/** Size of the numbers along the axis: a card is often seen at a quarter of its size. */
export const TICK_SIZE = 46;
/** From the lowest strip to the end of the numbers below it. */
const FOOT = 66;
const HEAD = 14;
/** Rungs are no further apart than this, so that few of them do not become blocks. */
const WIDEST_PITCH = 44;

/** Strokes that are still seen when the card is small. */
const BOLDER = [
  '.band-axis,.band-reach,.band-specification{stroke-width:3.5}',
  '.band-mark{stroke-width:5}',
  '.band-knot{stroke-width:3.5}',
  `.letters{fill:${light.ink}}`,
].join('');

/** What the page's own sheet says of the figure, for what SVG can say; read as a file, since tests get no style sheets. */
const style = (): string =>
  styleRules(readFileSync('src/styles/figures.css', 'utf8'), light)
    .filter(({ selector }) => !/text|label|number|narrow|stage/.test(selector))
    .map(({ selector, attributes }) => `${selector}{${attributes.flatMap(ofShapes).join(';')}}`)
    .join('') + BOLDER;

/** What a style says of shapes; letters are shapes too here, and have no face. */
const ofShapes = ([name, value]: readonly [string, string]): readonly string[] =>
  /^(?:fill|stroke|opacity)/.test(name) ? [`${name}:${value}`] : [];

function measuresFor(
  rungs: number,
  { width, height }: { readonly width: number; readonly height: number },
): BandMeasures {
  const rowPitch = Math.min(WIDEST_PITCH, Math.floor((height - HEAD - FOOT) / rungs));
  return {
    width,
    axis: [60, width - 150],
    head: HEAD,
    foot: FOOT,
    rowPitch,
    labelY: rowPitch / 2,
    detailY: rowPitch,
    stripY: rowPitch / 2,
    stripHeight: Math.min(22, Math.round(rowPitch * 0.62)),
    curveHeight: 0,
    labelX: 34,
    numberX: 0,
    numberAnchor: 'start',
    numberY: 0,
    tickRoom: 120,
    tickCount: 5,
    showDetail: false,
    tickDrop: 50,
    unitBeside: true,
    handleRadius: 0,
    handleEdge: 0,
    knotRise: 0,
  };
}

/** The number or unit of a `text` element as outlines: those of the page become letters only where its face is. */
function outlined(
  x: number,
  y: number,
  { className, text }: { readonly className: string; readonly text: string },
): string {
  const lettering = { size: TICK_SIZE, weight: 'Regular' } as const;
  const middle = className === 'band-tick' ? widthOf(text, lettering) / 2 : 0;
  return `<path class="letters" d="${outlineOf(text, { ...lettering, x: x - middle, y })}"/>`;
}

/**
 * The reading band for a card: the strips of the page's own figure, growing from the definition to the socket, on an axis of levels. The words
 * of its rungs are left out, which nobody could read at a quarter of the size, and so is the axis of watts, which the line above it says.
 */
export function cardBand(
  { kind: _, ...band }: CardBand,
  room: { readonly width: number; readonly height: number },
): string {
  const props = { ...band, frame: 'wide' } as const;
  const whole = readingBandLayout(props, measuresFor(band.rows.length, room));
  const rows = whole.rows.map(({ magnifier: _, curve: __, ...row }) => ({
    ...row,
    row: { ...row.row, label: '', number: '' },
  }));
  const drawing = { ...whole, rows, powers: [] };
  const markup = render(<ReadingBand {...props} drawing={drawing} name="" description="" />)
    .replace(/^<svg[^>]*>|<\/svg>$/g, '')
    .replace(/<(title|desc)\b[^>]*>[^<]*<\/\1>/g, '')
    .replace(/(class="band-axis" d=")M[\d.]+ [\d.]+H[\d.]+(?=M)/, '$1')
    .replace(
      /<text x="([\d.]+)" y="([-\d.]+)" class="([^"]*)">([^<]*)<\/text>/g,
      (_, x, y, className, text) =>
        text === '' || Number(y) < drawing.axisTop ? '' : outlined(Number(x), Number(y), { className, text }),
    );
  return `<style>${style()}</style><g class="band">${markup}</g>`;
}
