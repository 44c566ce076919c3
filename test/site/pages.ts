import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { underBase } from './under-base.mjs';

export interface BuiltPage {
  /** Address without the base path: `/learn/`. */
  readonly path: string;
  /** File in the folder of the site: `learn/index.html`. */
  readonly file: string;
  readonly html: string;
}

/** What builds the site into a folder: the second build has a script of its own. */
const wayToBuild = (directory: string): string =>
  directory === underBase.directory ? 'npx node test/site/under-base.mjs' : 'npm run build';

/** Every page of a built site, in the order of their addresses. */
export function builtPages(directory: string): readonly BuiltPage[] {
  const all = existsSync(directory) ? readdirSync(directory, { recursive: true, encoding: 'utf8' }) : [];
  const files = all.filter((file) => file.endsWith('.html'));
  if (files.length === 0)
    throw new Error(`builtPages: wish a built site (${wayToBuild(directory)}), got ${directory}`);
  return files.sort().map((file) => ({
    file,
    path: `/${file.replace(/(^|\/)index\.html$/, '$1')}`,
    html: readFileSync(join(directory, file), 'utf8'),
  }));
}
