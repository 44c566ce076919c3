import type { AstroIntegration } from 'astro';
import type { SiteAddress } from './site-address.ts';

/** Says while building which host full addresses name, where nobody said it: a printed page would lead nowhere. */
export function tellAddress({ origin, stated }: SiteAddress): AstroIntegration {
  return {
    name: 'site-address',
    hooks: {
      'astro:build:start': ({ logger }) => {
        if (!stated)
          logger.info(`full addresses name ${origin}: set SITE_URL before publishing (see README.md)`);
      },
    },
  };
}
