import { csvText } from '../../exchange/csv.ts';
import { fileName } from '../../exchange/file-name.ts';
import { pngOf } from '../../exchange/png.ts';
import type { FileToSave } from '../../exchange/save-file.ts';
import type { Decimal } from '../../text/style.ts';
import { shareableLink } from '../../text/summary/link.ts';
import { pointResult } from '../results/point-result.ts';
import { budgetRows } from './budget-table.ts';
import { filesStrings as strings } from './files-strings.ts';
import { readingRows } from './reading-table.ts';
import { sheetsAsFile } from './sheet-file.ts';
import type { Taken } from './taken.ts';

/** Files that a sheet can be saved as. */
export const FILE_KINDS = ['sheet', 'readings', 'budget', 'svg', 'png'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

/** A file, or the sentence on why there is none. */
export type FileMade = FileToSave | { readonly problem: string };

export interface FileWish {
  readonly kind: FileKind;
  readonly decimal: Decimal;
  /** The time as ISO 8601. */
  readonly at: string;
  /** Address of the page, without what follows `#`. */
  readonly page: string;
}

const CSV = 'text/csv;charset=utf-8';

/** Makes a file of what goes out. Rejects where the browser cannot draw. */
export async function fileOf(taken: Taken, wish: FileWish): Promise<FileMade> {
  const { measurement } = taken;
  const { title } = measurement;
  switch (wish.kind) {
    case 'sheet':
      return sheetFile(taken, wish.at);
    case 'readings':
      return {
        name: fileName(`${strings.names.readings} ${title}`, 'csv'),
        type: CSV,
        content: csvText(readingRows(measurement, wish.decimal), wish.decimal),
      };
    case 'budget': {
      const results = measurement.points.map(({ id }) => pointResult(measurement, id));
      return {
        name: fileName(`${strings.names.budget} ${title}`, 'csv'),
        type: CSV,
        content: csvText(budgetRows(measurement, results, wish.decimal), wish.decimal),
      };
    }
    case 'svg':
    case 'png':
      return pictureFile(taken, wish.kind, wish);
  }
}

function sheetFile({ entries }: Taken, at: string): FileMade {
  const written = sheetsAsFile([entries], at);
  if (!written.ok) return { problem: written.problem };
  return { name: fileName(entries.title, 'json'), type: 'application/json', content: written.text };
}

async function pictureFile(
  { measurement, shown, version }: Taken,
  kind: 'svg' | 'png',
  { page, decimal }: FileWish,
): Promise<FileMade> {
  if (!shown.inRange) return { problem: strings.noPicture };
  const { pictureOf } = await import('./picture.ts');
  const address = shareableLink(page)?.replace(/^https?:\/\//, '');
  const picture = pictureOf(measurement, shown, { address, version, decimal, showCurve: true });
  const name = fileName(measurement.title, kind);
  return kind === 'svg'
    ? { name, type: 'image/svg+xml', content: picture.svg }
    : { name, type: 'image/png', content: await pngOf(picture) };
}
