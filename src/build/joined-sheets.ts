import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterBuild, type BuiltSite, pageFiles } from './after-build.ts';
import { joinSheets } from './join-sheets.ts';

/** The texts of the sheets in the folder of hashed files, by name. */
async function sheetsIn(folder: string): Promise<ReadonlyMap<string, string>> {
  const names = (await readdir(folder)).filter((file) => file.endsWith('.css'));
  return new Map(
    await Promise.all(names.map(async (name) => [name, await readFile(join(folder, name), 'utf8')] as const)),
  );
}

async function joinSite({ root, base, assets }: BuiltSite): Promise<void> {
  const folder = join(root, assets);
  const prefix = `${base}${assets}/`;
  const sheets = await sheetsIn(folder);
  const read = (address: string): string => {
    const css = sheets.get(address.slice(prefix.length));
    if (css === undefined) throw new Error(`joinSite: wish a sheet below ${prefix}, got ${address}`);
    return css;
  };
  const asked = new Set<string>();
  for (const file of await pageFiles(root)) {
    const page = join(root, file);
    const { html, sheet } = joinSheets(await readFile(page, 'utf8'), read, (name) => `${prefix}${name}`);
    for (const [, name = ''] of html.matchAll(/\/([^/"]+\.css)"/g)) asked.add(name);
    if (sheet === undefined) continue;
    await writeFile(join(folder, sheet.name), sheet.css);
    await writeFile(page, html);
  }
  for (const name of sheets.keys()) if (!asked.has(name)) await rm(join(folder, name));
}

/** One style sheet a page in place of several, and none left that no page asks for. Scripts of this site ask for none. */
export const joinedSheets = () => afterBuild('joined-sheets', joinSite);
