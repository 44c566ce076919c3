import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join, posix, sep } from 'node:path';
import { type Zippable, zipSync } from 'fflate';

/** Folder that the packed site unpacks into. */
const FOLDER = 'how-sure-is-a-watt';
/** The earliest date that such an archive can state: the day of packing would change its bytes. */
const DATE = '1980-01-01T00:00:00';

/** The built site in one archive. @throws Error if the folder holds no site */
export async function packed(directory: string): Promise<Uint8Array> {
  if (!existsSync(join(directory, '404.html'))) {
    throw new Error(`packed: wish a built site (npm run build), got ${directory}`);
  }
  const entries = await readdir(directory, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const archive: Zippable = {};
  for (const file of files) {
    const name = file.slice(join(directory, '/').length).replaceAll(sep, posix.sep);
    archive[`${FOLDER}/${name}`] = await readFile(file);
  }
  return zipSync(archive, { level: 9, mtime: DATE });
}
