import { readdir, readFile } from 'node:fs/promises';
import { join, posix, sep } from 'node:path';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { builtBase } from './built-base.ts';

/** Folder that the packed site unpacks into: what a small server is told to serve. */
const FOLDER = 'how-sure-is-a-watt';
/** The earliest date that such an archive can state: the day of packing would change its bytes. */
const DATE = '1980-01-01T00:00:00';

/** What whoever unpacks it needs to know, beside the site. */
const howToOpen = (base: string): string =>
  [
    'How to open this copy',
    '',
    'Its pages have to come from a server: opened as files they have no style, and their links lead nowhere.',
    'Any small server will do. With Python, for example, in the folder that this file lies in:',
    '',
    '  python3 -m http.server',
    '',
    `Then open http://localhost:8000${base} in a browser on the same machine. No network is needed.`,
    '',
  ].join('\n');

/** The built site in one archive. @throws Error if the folder holds no site */
export async function packed(directory: string): Promise<Uint8Array> {
  const base = await builtBase(directory);
  const entries = await readdir(directory, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const folder = `${FOLDER}${decodeURI(base)}`; // a folder is named in plain letters
  const archive: Zippable = { [`${FOLDER}/how-to-open.txt`]: strToU8(howToOpen(base)) };
  for (const file of files) {
    const name = file.slice(join(directory, '/').length).replaceAll(sep, posix.sep);
    archive[`${folder}${name}`] = await readFile(file);
  }
  return zipSync(archive, { level: 9, mtime: DATE });
}
