import manifest from '../../package.json' with { type: 'json' };

/** The version that the pages say they are of: the project's own. */
export const version: string = manifest.version;
