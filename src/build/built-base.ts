import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * The path that the site in a folder was built for, with a slash at both ends: its links lead nowhere else.
 * @throws Error if the folder holds no built site
 */
export async function builtBase(directory: string): Promise<string> {
  const text = await readFile(join(directory, 'manifest.webmanifest'), 'utf8').catch(() => '{}');
  const { scope } = JSON.parse(text) as { readonly scope?: unknown };
  if (typeof scope !== 'string')
    throw new Error(`builtBase: wish a built site (npm run build), got ${directory}`);
  return scope;
}
