import { test as base, expect, type Page } from '@playwright/test';
import { builtPages } from '../site/pages.ts';
import { built } from '../site/under-base.mjs';
import { sampledPages } from './sampled.ts';

/** Every page of the built site. */
export const allPages = builtPages(built.directory);
/** Pages that show one figure, for a frame on a page of somebody else's. */
export const embeds = allPages.filter(({ path }) => path.startsWith('/embed/'));
/**
 * Those of them that every gate runs on. They are many and alike: the frame around the figure is the same, and the figure is the one
 * that its lesson or example shows, where every gate meets it. So each is looked at once at the width where it is tightest, by axe
 * too (`page.gate.ts`), and the rest is tried on three: one that is dragged, one with a part that is fetched, one with buttons.
 */
const embedSample = ['/embed/reading-band/', '/embed/few-readings/', '/embed/unit-tree/'];
/** The pages that the gates run on: all but the other embedded figures, and those that are made like another (`sampled.ts`). */
const sample = sampledPages(allPages).filter(
  (page) => !embeds.includes(page) || embedSample.includes(page.path),
);
/** With `EVERY_PAGE=1` those too, which takes half an hour: before a release, and where what they are made from has changed. */
export const pages = process.env.EVERY_PAGE === '1' ? allPages : sample;
/** The embedded figures that are not among them. */
export const otherEmbeds = embeds.filter((page) => !pages.includes(page));

/** Whatever a page says to the console, throws, fetches in vain or from elsewhere, or tries against the content policy. */
function listen(page: Page, complaints: string[]): void {
  page.on('console', (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(`thrown: ${error.message}`));
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    // a page that is left gives up what it still fetches; what is missing or refused fails by another name
    // without script a browser gives up what is asked for ahead, and calls it so; what the policy refuses is told as a violation, too
    if (why !== 'net::ERR_ABORTED' && why !== 'csp') complaints.push(`failed: ${request.url()} ${why}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    const inside = ['data:', 'blob:'].includes(protocol) || hostname === '127.0.0.1';
    if (!inside) complaints.push(`left the site: ${request.url()}`);
  });
}

/** Playwright's test, where each page that a test opens has to keep quiet. */
export const test = base.extend<{ quiet: undefined; keepsSite: boolean }>({
  /** Whether the browser may keep the whole site, as it does for readers; each test would fetch all of it anew. */
  keepsSite: [false, { option: true }],
  quiet: [
    async ({ context, keepsSite }, use) => {
      const complaints: string[] = [];
      if (!keepsSite)
        await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
      await context.addInitScript(() => {
        document.addEventListener('securitypolicyviolation', (event) =>
          console.error(`content policy: ${event.violatedDirective} ${event.blockedURI}`),
        );
      });
      context.on('page', (page) => listen(page, complaints));
      await use(undefined);
      expect(complaints, 'complaints of the page').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
