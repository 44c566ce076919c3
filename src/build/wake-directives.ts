import type { AstroIntegration } from 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes when first seen, and at once where the address carries a state. */
    'client:needed'?: boolean;
    /** Wakes as soon as the page has been drawn. */
    'client:soon'?: boolean;
  }
}

/** Lets wrappers say when an island wakes. */
export function wakeDirectives(): AstroIntegration {
  return {
    name: 'wake-directives',
    hooks: {
      'astro:config:setup': ({ addClientDirective }) => {
        for (const name of ['needed', 'soon'])
          addClientDirective({ name, entrypoint: `./src/build/${name}.directive.ts` });
      },
    },
  };
}
