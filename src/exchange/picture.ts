import type { Palette } from '../styles/tokens.ts';
import { cleanText } from '../text/clean.ts';
import { cleanedApart } from '../text/isolate.ts';

/** What a picture that stands alone says around its drawing: boards strip captions, so that everything is drawn in. */
export interface PictureWords {
  readonly title: string;
  /** The result in one line: level and band, power and its ends. */
  readonly result: string;
  /** Further statements above the drawing, each a sentence. */
  readonly above: readonly string[];
  /** Assumptions and origin, below. */
  readonly below: readonly string[];
}

/** A drawing in its own coordinates. */
export interface Drawing {
  readonly markup: string;
  readonly width: number;
  readonly height: number;
}

export interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** Margin around everything, and rows of words: their size, the step to the next, and how many letters a row takes. */
const MARGIN = 30;
const TITLE = { size: 21, step: 30, weight: 600 } as const;
const RESULT = { size: 25, step: 36, weight: 700 } as const;
const WORDS = { size: 16, step: 23, weight: 400 } as const;
/** Widest letters of ordinary text on average, in parts of its size: no face that a viewer may put in is wider. */
const LETTER = 0.56;

interface TextRow {
  readonly text: string;
  readonly size: number;
  readonly step: number;
  readonly weight: number;
}

const escaped = (text: string): string =>
  cleanedApart(text, cleanText)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** A number keeps its unit, or its next word, in its own row. */
const held = (text: string): string => text.replace(/(\d) (?=[^\s\d])/g, '$1\u00a0');

/** Words in rows that are no wider than there is room for. */
function rowsOf(text: string, style: Omit<TextRow, 'text'>, width: number): readonly TextRow[] {
  const most = Math.floor(width / (LETTER * style.size));
  const rows: string[] = [];
  let current = '';
  for (const word of held(cleanedApart(text, cleanText))
    .split(' ')
    .flatMap((long) => long.match(new RegExp(`.{1,${most}}`, 'gu')) ?? [])) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (longer.length <= most) current = longer;
    else {
      rows.push(current);
      current = word;
    }
  }
  return [...rows, current].filter((row) => row !== '').map((row) => ({ ...style, text: row }));
}

/** Rows as text elements from a height on, and the height behind them. */
function drawnRows(rows: readonly TextRow[], from: number, fill: string): { markup: string; end: number } {
  let y = from;
  const texts = rows.map(({ text, size, step, weight }) => {
    y += step;
    return `<text x="${MARGIN}" y="${y}" font-size="${size}" font-weight="${weight}" fill="${fill}">${escaped(text)}</text>`;
  });
  return { markup: texts.join(''), end: y };
}

/** Words and drawing as one SVG file on a ground of its own, in faces that every viewer has. */
export function standalonePicture(words: PictureWords, drawing: Drawing, palette: Palette): Picture {
  const width = drawing.width + 2 * MARGIN;
  const inner = drawing.width;
  const head = [
    ...rowsOf(words.title, TITLE, inner),
    ...rowsOf(words.result, RESULT, inner),
    ...words.above.flatMap((text) => rowsOf(text, WORDS, inner)),
  ];
  const above = drawnRows(head, MARGIN / 2, palette.ink);
  const top = above.end + MARGIN / 2;
  const below = drawnRows(
    words.below.flatMap((text) => rowsOf(text, WORDS, inner)),
    top + drawing.height,
    palette.muted,
  );
  const height = Math.ceil(below.end + MARGIN);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif">`,
    `<title>${escaped(`${words.title}: ${words.result}`)}</title>`,
    `<rect width="${width}" height="${height}" fill="${palette.paper}"/>`,
    above.markup,
    `<g transform="translate(${MARGIN} ${top})">${drawing.markup}</g>`,
    below.markup,
    '</svg>',
  ].join('');
  return { svg, width, height };
}
