import { tokensCss } from '../styles/tokens.ts';

const ID = 'virtual:tokens.css';

/** Vite plugin: `import 'virtual:tokens.css'` gives the custom properties made from `src/styles/tokens.ts`. */
export function tokensPlugin() {
  return {
    name: 'tokens-css',
    resolveId: (id: string) => (id === ID ? `\0${ID}` : undefined),
    load: (id: string) => (id === `\0${ID}` ? tokensCss() : undefined),
  };
}
