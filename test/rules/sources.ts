import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceFile {
  /** Path from the root of the project, with `/` between folders. */
  readonly path: string;
  readonly text: string;
  /** Lines, blank ones and comments included. */
  readonly lines: number;
}

/** Every file below a folder of the project whose name ends in one of the endings. */
export function filesBelow(folder: string, endings: readonly string[]): readonly SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort()
    .map((path) => {
      const text = readFileSync(join(root, path), 'utf8');
      return { path, text, lines: text.split('\n').length - 1 };
    });
}

export const code = ['.ts', '.tsx', '.astro', '.mjs'];

/** Folders of words and tables, where a long file is a long list. */
export const isContent = ({ path }: SourceFile): boolean =>
  /^src\/(checks|examples|formulas|lessons|questions)\//.test(path);
