import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface BuiltPage {
  /** Address without the base path: `/learn/`. */
  readonly path: string;
  /** File in the folder of the site: `learn/index.html`. */
  readonly file: string;
  readonly html: string;
}

/** Every page of a built site, in the order of their addresses. */
export function builtPages(directory: string): readonly BuiltPage[] {
  const files = readdirSync(directory, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.html'),
  );
  if (files.length === 0) throw new Error(`builtPages: wish a built site (npm run build), got ${directory}`);
  return files.sort().map((file) => ({
    file,
    path: `/${file.replace(/(^|\/)index\.html$/, '$1')}`,
    html: readFileSync(join(directory, file), 'utf8'),
  }));
}
