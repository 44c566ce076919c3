import type { AstroIntegration } from 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes when first seen, and at once where the address carries a state. */
    'client:needed'?: boolean;
  }
}

/** Lets wrappers say `client:needed`. */
export function neededDirective(): AstroIntegration {
  return {
    name: 'client-needed',
    hooks: {
      'astro:config:setup': ({ addClientDirective }) =>
        addClientDirective({ name: 'needed', entrypoint: './src/build/needed.directive.ts' }),
    },
  };
}
