import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '../..');
/** Copies with switches, bundles and results by the way. */
export const work = resolve(root, '.cache/mutants');
/** What was found, file by file. */
export const report = resolve(root, '.reports/mutation.json');

/** @param {string} folder @param {string} ending */
export const filesBelow = (folder, ending) =>
  readdirSync(resolve(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`)
    .sort();

/** @param {string} path */
export const json = (path) => JSON.parse(readFileSync(path, 'utf8'));

/** Values of a file that has one a line; none without the file. @param {string} path */
export const jsonLines = (path) =>
  existsSync(path)
    ? readFileSync(path, 'utf8')
        .split('\n')
        .filter(Boolean)
        .map((line) => JSON.parse(line))
    : [];
