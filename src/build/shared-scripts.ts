import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { Rolldown, ViteBuilder } from 'vite';
import { nameChanges, type Page, renamed, scriptsOn } from './page-scripts.ts';
import { fileOfModule } from './shared-groups.ts';

type Options = Parameters<ViteBuilder['build']>[0]['config']['build'];
type Built = Awaited<ReturnType<ViteBuilder['build']>>;
type Files = readonly Rolldown.OutputChunk[];

/** What bundles the browser's script with its options, and what came out the first time. */
interface Bundler {
  readonly options: Options;
  readonly build: () => Promise<Built>;
  readonly first: Files;
}

/**
 * Cuts the site's script so that a page loads what it needs in few files. Left alone the bundler makes one file for each set of
 * entries that share something, and counts as an entry whatever is fetched later by a call: a page then loads dozens of small
 * files, which compress badly. So the script is bundled twice. The first time nothing is written, and the pages are made with the
 * names of that time: they show which islands stand together. The second time what the same pages need is put into one file, and
 * the pages are told the new names.
 */
export function sharedScripts(): AstroIntegration {
  let bundler: Bundler | undefined;
  return {
    name: 'shared-scripts',
    hooks: {
      'astro:build:setup': ({ vite: { builder } }) => {
        const buildApp = builder?.buildApp;
        if (builder === undefined || buildApp === undefined)
          throw new Error('sharedScripts: wish a build in several environments, got none');
        builder.buildApp = (app) =>
          buildApp(
            withClient(app, async (build, options) => {
              const built = await bundleForNames(build, options);
              bundler = { build, options, first: filesOf(built) };
              return built;
            }),
          );
      },
      'astro:build:generated': async ({ dir }) => {
        if (bundler === undefined) throw new Error('sharedScripts: wish the script bundled before the pages');
        await cutFor(fileURLToPath(dir), bundler);
      },
    },
  };
}

/** The builder, where the browser's script is bundled by a function of ours. */
function withClient(
  app: ViteBuilder,
  bundle: (build: () => Promise<Built>, options: Options) => Promise<Built>,
): ViteBuilder {
  const build = app.build.bind(app);
  app.build = (environment) =>
    environment.name === 'client'
      ? bundle(() => build(environment), environment.config.build)
      : build(environment);
  return app;
}

/** Bundles as the bundler sees fit, and writes nothing. */
function bundleForNames(build: () => Promise<Built>, options: Options): Promise<Built> {
  options.modulePreload = false; // see `plainImport`
  options.write = false;
  return build();
}

/** Bundles with each module in the file that is named for it. */
async function bundleInto(files: ReadonlyMap<string, string>, { build, options }: Bundler): Promise<Files> {
  const { output } = options.rolldownOptions;
  if (output === undefined || Array.isArray(output))
    throw new Error('sharedScripts: wish one output of the browser’s script, got none or several');
  options.write = true;
  // a file holds just what was put into it: what its modules need may stand in others
  options.rolldownOptions.preserveEntrySignatures = 'allow-extension';
  output.codeSplitting = {
    includeDependenciesRecursively: false,
    groups: [{ name: (module) => files.get(module) ?? null }],
  };
  return filesOf(await build());
}

/** Bundles for the pages of a folder, and tells them the names that their scripts then have. */
async function cutFor(folder: string, bundler: Bundler): Promise<void> {
  const paths = (await readdir(folder, { recursive: true })).filter((path) => path.endsWith('.html')).sort();
  const made = await Promise.all(
    paths.map(async (path) => ({ path, html: await readFile(join(folder, path), 'utf8') })),
  );
  const pages = made.map(
    ({ path, html }): Page => ({ path: `/${path.replace(/index\.html$/, '')}`, entries: scriptsOn(html) }),
  );
  const names = nameChanges(bundler.first, await bundleInto(fileOfModule(bundler.first, pages), bundler));
  for (const { path, html } of made) await writeFile(join(folder, path), renamed(html, names));
}

function filesOf(built: Built): Files {
  const outputs = Array.isArray(built) ? built : [built];
  return outputs.flatMap((each) => {
    if (!('output' in each)) throw new Error('sharedScripts: wish a build, got a watcher');
    return each.output.filter((part): part is Rolldown.OutputChunk => part.type === 'chunk');
  });
}
