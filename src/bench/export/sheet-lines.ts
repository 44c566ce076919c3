import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement, StatedLink } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';
import { fewestDecimals } from '../../text/place.ts';
import { dbText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { joined, type Line, line, type Piece } from '../../text/summary/piece.ts';
import { sourceWords } from '../../text/words.ts';
import { methodText } from '../words/method-words.ts';
import { RECORD_KEYS, recordLines } from '../words/record-words.ts';
import { statedText } from '../words/stated-link-text.ts';
import { textStrings as strings } from './text-strings.ts';

type Part = string | Piece | ((style: Style) => string);

/** Nobody states a loss or a percentage to more decimals than this. */
const MOST_DECIMALS = 4;

/** By which method, with its set-up. */
export const methodLine = ({ setup }: Measurement): Line =>
  line('method', strings.method, { sentence: (style) => unstopped(methodText(style, setup)) });

/** Lines of a record end without a full stop. */
export const unstopped = (sentence: string): string => sentence.replace(/\.$/, '');

/** The chain link by link, then what was left out for a what-if. */
export function chainLines({ links }: Measurement): readonly Line[] {
  const on = links.filter(({ off }) => !off);
  const off = links.filter((link) => link.off);
  return [
    on.length === 0
      ? line('taken', strings.noChain)
      : line('taken', strings.chain, ...joined(on.map(linkParts), '; ').flat()),
    ...(off.length === 0
      ? []
      : [
          line(
            'taken',
            strings.off,
            ...joined(
              off.map(({ label }) => ({ foreign: isolated(label) })),
              ', ',
            ),
          ),
        ]),
  ];
}

function linkParts(link: StatedLink): readonly Part[] {
  const { label, lossDb, source, cause, sensitivity, reliability, assumed } = link;
  const decimals = fewestDecimals(lossDb, MOST_DECIMALS);
  return [
    { foreign: isolated(label) },
    ' ',
    ...(lossDb === 0 ? [] : [(style: Style) => dbText(style, { db: lossDb, decimals }), ', ']),
    { sentence: (style: Style) => statedText(style, link) },
    ` (${assumed ? strings.assumed : sourceWords[source]}`,
    ...(reliability === undefined
      ? []
      : [
          ', ',
          (style: Style) =>
            strings.reliability(percentText(style, { percent: 100 * reliability, decimals: 0 })),
        ]),
    ...(cause === undefined
      ? []
      : [
          `, ${strings.cause}`,
          { foreign: isolated(cause) },
          ...(sensitivity === -1 ? [strings.against] : []),
        ]),
    ')',
  ];
}

/** Who, when and with what, then what was agreed and changed: a line each. */
export const recordLinesOf = (entries: SheetEntries): readonly Line[] =>
  recordLines('unicode', entries).map(({ key, label, text }) =>
    line(RECORD_KEYS.some((note) => note === key) ? 'notes' : 'agreed', {
      foreign: `${label}: ${isolated(unstopped(text))}`,
    }),
  );
