import type { AstroIntegration } from 'astro';
import type { Rolldown, ViteBuilder } from 'vite';
import { fileOfModule } from './shared-groups.ts';

/**
 * Cuts the site's script so that a page loads what it needs in few files. Left alone the bundler makes one file for each set of
 * entries that share something, and counts as an entry whatever is fetched later by a call: a page then loads dozens of small
 * files, which compress badly. So the script is bundled twice: the first time shows which island needs a module at once, the
 * second puts the modules of the same islands into one file.
 */
export function sharedScripts(): AstroIntegration {
  return {
    name: 'shared-scripts',
    hooks: {
      'astro:build:setup': ({ vite: { builder } }) => {
        const buildApp = builder?.buildApp;
        if (builder === undefined || buildApp === undefined)
          throw new Error('sharedScripts: wish a build in several environments, got none');
        builder.buildApp = (app) => buildApp(bundlingTwice(app));
      },
    },
  };
}

/** The builder, where the browser's script is bundled a first time without being written. */
function bundlingTwice(app: ViteBuilder): ViteBuilder {
  const build = app.build.bind(app);
  app.build = async (environment) => {
    if (environment.name !== 'client') return build(environment);
    const options = environment.config.build;
    const { output } = options.rolldownOptions;
    if (output === undefined || Array.isArray(output))
      throw new Error('sharedScripts: wish one output of the browser’s script, got none or several');
    options.modulePreload = false; // see `plainImport`
    options.write = false;
    const files = fileOfModule(chunksOf(await build(environment)));
    options.write = true;
    // a file holds just what was put into it: what its modules need may stand in others
    options.rolldownOptions.preserveEntrySignatures = 'allow-extension';
    output.codeSplitting = {
      includeDependenciesRecursively: false,
      groups: [{ name: (module) => files.get(module) ?? null }],
    };
    return build(environment);
  };
  return app;
}

type Built = Awaited<ReturnType<ViteBuilder['build']>>;

function chunksOf(built: Built): readonly Rolldown.OutputChunk[] {
  const outputs = Array.isArray(built) ? built : [built];
  return outputs.flatMap((each) => {
    if (!('output' in each)) throw new Error('sharedScripts: wish a build, got a watcher');
    return each.output.filter((part): part is Rolldown.OutputChunk => part.type === 'chunk');
  });
}
