/** A page as made, by the place of its file in the site's folder, with the scripts it names. */
export interface Page {
  readonly path: string;
  /** Names of the files that it loads at once, each with what that imports. */
  readonly entries: readonly string[];
}

/** A bundled file that may be named by a page: the module it is for, if it is for one. */
interface Named {
  readonly fileName: string;
  readonly facadeModuleId: string | null;
  readonly isEntry: boolean;
}

/** A script's name as a page says it, after whatever path the site lies under. */
const SCRIPT = /_astro\/[\w.$~-]+\.js\b/g;

/** Names of the scripts that a page says, each once. */
export const scriptsOn = (html: string): readonly string[] => [...new Set(html.match(SCRIPT) ?? [])].sort();

/** What each entry of a first bundle is called in a second one. */
export function nameChanges(before: readonly Named[], after: readonly Named[]): ReadonlyMap<string, string> {
  const names = new Map(
    after.filter(({ isEntry }) => isEntry).map((file) => [file.facadeModuleId, file.fileName]),
  );
  return new Map(
    before.flatMap(({ isEntry, facadeModuleId, fileName }) => {
      const name = isEntry && names.get(facadeModuleId);
      return name ? [[fileName, name] as const] : [];
    }),
  );
}

/** A page with the new names of its scripts. */
export const renamed = (html: string, names: ReadonlyMap<string, string>): string =>
  html.replaceAll(SCRIPT, (name) => {
    const now = names.get(name);
    if (now === undefined) throw new Error(`renamed: wish a script of the bundle, got ${name}`);
    return now;
  });
