import { readdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, AstroIntegrationLogger } from 'astro';

/** Where a built site lies, and where it is served. */
export interface BuiltSite {
  /** Folder of the built site. */
  readonly root: string;
  /** Base path with its slash at the end. */
  readonly base: string;
  /** Folder of the files with a hash in their name, in `root`. */
  readonly assets: string;
}

/** A step that changes or adds files once the pages are written. */
export function afterBuild(
  name: string,
  step: (site: BuiltSite, logger: AstroIntegrationLogger) => Promise<void>,
): AstroIntegration {
  let base = '/';
  let assets = '_astro';
  return {
    name,
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.replace(/\/?$/, '/');
        assets = config.build.assets;
      },
      'astro:build:done': ({ dir, logger }) => step({ root: fileURLToPath(dir), base, assets }, logger),
    },
  };
}

/** The pages of a built site, as paths in its folder, in an order that is the same everywhere. */
export async function pageFiles(root: string): Promise<readonly string[]> {
  const files = await readdir(root, { recursive: true });
  return files.filter((file) => file.endsWith('.html')).sort();
}
