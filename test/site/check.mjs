// Checks the built site without a browser, and prints what its pages weigh: `npm run site`.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { version } from '../../src/layouts/version.ts';
import { cardProblems, codeProblems } from './cards.ts';
import { headerProblems, manifestProblems, sitemapPaths, sitemapProblems } from './hosting.ts';
import { kindProblems } from './kinds.ts';
import { brokenLinks, brokenResults, unfoundPages } from './links.ts';
import {
  fetchedFromElsewhere,
  headProblems,
  inlineStyles,
  invalidMarkup,
  weakPolicies,
  withoutVersion,
} from './markup.ts';
import { builtPages } from './pages.ts';
import { bareSymbols } from './spoken.ts';
import { built, underBase } from './under-base.mjs';
import { budget, weigh } from './weights.ts';

const site = { ...built, pages: builtPages(built.directory) };
const club = { ...underBase, pages: builtPages(underBase.directory) };
const index = readFileSync(join(site.directory, 'search/index.json'), 'utf8');
const weights = site.pages.map((page) => ({
  path: page.path,
  weight: weigh(site, page),
  most: budget(page.path),
}));

/** @param {'script' | 'offline' | 'html' | 'css' | 'font'} part @returns {string[]} */
const tooHeavy = (part) =>
  weights
    .filter(({ weight, most }) => weight[part] > most[part])
    .map(({ path, weight, most }) => `${path}: ${weight[part]} bytes of ${part}, at most ${most[part]}`);

/** @type {Record<string, readonly string[]>} what each check found wrong */
const checks = {
  'HTML is valid': invalidMarkup(site),
  'links lead somewhere': brokenLinks(site),
  'links lead somewhere under a base path': brokenLinks(club),
  'what is found leads somewhere': brokenResults(site, index),
  'every page can be found': unfoundPages(site, sitemapPaths(site), index),
  'each page is of a kind': kindProblems(site.pages),
  'both builds have the same pages': site.pages.length === club.pages.length ? [] : ['they do not'],
  'no style attribute is left': inlineStyles(site),
  'the content policy is strict': weakPolicies(site),
  'hosts are told the same policy': [...headerProblems(site), ...headerProblems(club)],
  'the manifest leads to its icons': [...manifestProblems(site), ...manifestProblems(club)],
  'the sitemap names the pages': [...sitemapProblems(site), ...sitemapProblems(club)],
  'nothing is fetched from elsewhere': fetchedFromElsewhere(site),
  'the foot of a page says the version': withoutVersion(site, version),
  'units are spoken in words': bareSymbols(site),
  'heads are whole and differ': headProblems(site),
  'each page has its preview card': cardProblems(
    site,
    new URL(process.env.SITE_URL ?? 'https://example.org').origin,
  ),
  'each page has its preview card under a base path': cardProblems(club, new URL(underBase.url).origin),
  'printed codes lead to their page': codeProblems(site),
  'printed codes lead to their page under a base path': codeProblems(club),
  'script within budget': tooHeavy('script'),
  'script for use without a network within budget': tooHeavy('offline'),
  'HTML within budget': tooHeavy('html'),
  'CSS within budget': tooHeavy('css'),
  'font within budget': tooHeavy('font'),
};

/** @param {number} bytes */
const shown = (bytes) => (bytes / 1000).toFixed(1).padStart(7);
const offline = weights.map(({ weight }) => weight.offline);
console.log(
  `beside what is listed, up to ${Math.max(...offline)} bytes of script on each page keep the site for use without a network`,
);
console.log('kB, gzip   script   html    css   font');
for (const { path, weight } of weights) {
  console.log(
    `${shown(weight.script)}/${budget(path).script / 1000} ${shown(weight.html)}${shown(weight.css)}${shown(weight.font)}  ${path}`,
  );
}
const failed = Object.entries(checks).filter(([, problems]) => problems.length > 0);
for (const [name, problems] of failed) {
  console.log(`✗ ${name}: ${problems.length}`);
  for (const problem of problems.slice(0, 20)) console.log(`    ${problem}`);
}
const counts = { passed: Object.keys(checks).length - failed.length, failed: failed.length };
mkdirSync('.reports', { recursive: true });
writeFileSync('.reports/site.json', JSON.stringify(counts));
console.log(
  `site: ${counts.passed} of ${Object.keys(checks).length} checks pass, ${site.pages.length} pages`,
);
process.exitCode = failed.length > 0 ? 1 : 0;
