import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import sitemap from '@astrojs/sitemap';
import { defineConfig, fontProviders } from 'astro/config';
import { askAhead } from './src/build/ahead.ts';
import { baseLinks } from './src/build/base-links.ts';
import { carryScript } from './src/build/carry.ts';
import { firstPicture } from './src/build/first-picture.ts';
import { hoistStylesIntegration } from './src/build/hoist-styles.ts';
import { hosting } from './src/build/hosting.ts';
import { joinedSheets } from './src/build/joined-sheets.ts';
import { katexSheet } from './src/build/katex-sheet.ts';
import { offline } from './src/build/offline.ts';
import { plainImport } from './src/build/plain-import.ts';
import { sharedScripts } from './src/build/shared-scripts.ts';
import { siteAddress } from './src/build/site-address.ts';
import { tellAddress } from './src/build/tell-address.ts';
import { tokensPlugin } from './src/build/tokens-plugin.ts';
import { wakeDirectives } from './src/build/wake-directives.ts';
import { moved } from './src/examples/moved.ts';

const address = siteAddress(process.env.SITE_URL, process.env.SITE_BASE);
/** @param {string} page */
const hasMoved = (page) => moved.some(({ from }) => page.endsWith(`/examples/${from}/`));
/** What builds keep for the next one. */
const kept = process.env.SITE_KEPT ?? '.cache';

export default defineConfig({
  site: address.origin,
  base: address.base,
  trailingSlash: 'always',
  compressHTML: true, // the other way takes the space between a word and a link at the start of a line
  outDir: process.env.SITE_OUT ?? '.site',
  cacheDir: `${kept}/astro`,
  markdown: {
    syntaxHighlight: false, // the highlighter writes style attributes
    processor: satteri({ mdastPlugins: [baseLinks(address.base)] }),
  },
  integrations: [
    mdx(),
    preact(),
    wakeDirectives(),
    // the stage shows what a lesson's own page says, a frame what its figure's page does
    sitemap({
      filter: (page) => !/\/(stage|embed)\//.test(page) && !hasMoved(page),
      namespaces: { news: false, xhtml: false, image: false, video: false }, // nothing of theirs is in it
    }),
    joinedSheets(),
    hoistStylesIntegration(), // after it: the styles of formulas are each page's own
    firstPicture(),
    sharedScripts(),
    askAhead(), // after what names the files of script
    carryScript(),
    offline(), // after all that changes files
    hosting(),
    tellAddress(address),
  ],
  fonts: [
    {
      provider: fontProviders.local(),
      name: 'Page One',
      cssVariable: '--font-body',
      // a face that comes late stays out of the page it is late for, so that nothing moves; the next page has it
      display: 'optional',
      optimizedFallbacks: false, // they have no bold letters; ours stand in base.css
      fallbacks: ['Page One S', 'Page One R', 'Page One A', 'Page One D', 'system-ui'],
      options: {
        variants: [{ src: ['./src/assets/fonts/page-one.woff2'], weight: '400 700', style: 'normal' }],
      },
    },
  ],
  security: {
    csp: {
      algorithm: 'SHA-256',
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
    },
  },
  vite: {
    cacheDir: `${kept}/vite`,
    plugins: [katexSheet(), tokensPlugin(), plainImport()],
    build: {
      assetsInlineLimit: 0, // no `data:` fonts, so that font-src 'self' is enough
      rolldownOptions: {
        // what d3 makes when it is loaded and nobody here uses
        treeshake: { manualPureFunctions: ['bisector'], propertyReadSideEffects: false },
        output: {},
        onLog(level, log, handler) {
          const astrosOwn =
            log.code === 'MODULE_LEVEL_DIRECTIVE' && log.message.includes('astro:head-inject');
          if (!astrosOwn) handler(level, log);
        },
      },
    },
  },
});
