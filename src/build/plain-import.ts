const HELPER = /vite\/preload-helper/;

/**
 * Vite plugin: what is fetched by a call is fetched plainly. Vite's own helper also looks up what the fetched file will need; the
 * files here are few, and every page with script would carry the helper.
 */
export function plainImport() {
  return {
    name: 'plain-import',
    enforce: 'pre' as const,
    load: {
      filter: { id: HELPER },
      handler: () => 'export const __vitePreload = (load) => load();',
    },
  };
}
