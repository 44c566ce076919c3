import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const filesOf = (directory: string): readonly string[] =>
  readdirSync(directory, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(join(directory, '/').length))
    .sort();

/** Files that only one of two folders has, or that differ in a byte. */
export function differences(one: string, other: string): readonly string[] {
  const mine = filesOf(one);
  if (mine.length === 0) throw new Error(`differences: wish a folder with files, got ${one}`);
  return [
    ...mine.filter((file) => !existsSync(join(other, file))).map((file) => `${file}: only in the first`),
    ...filesOf(other)
      .filter((file) => !existsSync(join(one, file)))
      .map((file) => `${file}: only in the second`),
    ...mine
      .filter(
        (file) =>
          existsSync(join(other, file)) &&
          !readFileSync(join(one, file)).equals(readFileSync(join(other, file))),
      )
      .map((file) => `${file}: differs`),
  ];
}
