import type { Page } from '@playwright/test';
import { type Condition, conditions } from '../../src/access/conditions.ts';
import type { LookId } from '../../src/access/looks.ts';
import { pageOfEachKind } from '../site/kinds.ts';
import { awake } from './awake.ts';
import { onColours, violations } from './axe.ts';
import { type Faint, faint } from './contrast.ts';
import { covered } from './covered.ts';
import { cutTexts, overflowing, smallTexts } from './laid-out.ts';
import { runTogether } from './run-together.ts';
import { allPages, expect, test } from './site.ts';
import { textsOver } from './texts-over.ts';

/** What moves by itself, or would when something changes. */
const moving = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const slow = [...document.querySelectorAll('*')].filter((node) => {
      const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(node);
      return /[1-9]/.test(transitionDuration) || animationName !== 'none' || scrollBehavior === 'smooth';
    });
    return [
      ...slow.map((node) => `${node.tagName.toLowerCase()}.${node.getAttribute('class') ?? ''}`),
      ...document.getAnimations().map(({ id }) => `animation ${id}`),
    ];
  });

const notWhite = ({ ground }: Faint): readonly string[] =>
  ground.every((value) => value === 255) ? [] : [`the ground is ${ground.join(' ')}`];

type Look = () => Promise<readonly string[]>;

/** How each look at a page under a condition is taken: what it finds wrong. What is too faint is looked for once for all that ask. */
function looksAt(page: Page): Readonly<Record<LookId, Look>> {
  let found: Promise<Faint> | undefined;
  const whatIsFaint = (): Promise<Faint> => {
    found ??= faint(page);
    return found;
  };
  return {
    rules: () => violations(page),
    colours: () => violations(page, onColours),
    figures: async () => (await whatIsFaint()).figures,
    edges: async () => (await whatIsFaint()).edges,
    white: async () => notWhite(await whatIsFaint()),
    fits: () => overflowing(page),
    letters: async () => [...(await smallTexts(page, 12)), ...(await cutTexts(page))],
    uncovered: () => covered(page),
    still: () => moving(page),
    apart: () => textsOver(page),
    uncut: () => runTogether(page),
  };
}

/** Everything that can be unfolded is. */
const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });

/** What browsers write in unless they are told otherwise, in pixels. */
const USUAL_LETTERS = 16;
/** Parts far below are laid out before they are scrolled to, so that they can be looked at. */
const ALL_LAID_OUT = '*{content-visibility:visible!important}';

/** Sets the page under a condition. Rules of the reader's own come as the browser has them: no policy of the page keeps them out. */
async function setUnder(page: Page, condition: Condition): Promise<void> {
  const { width, height, zoom, scheme = 'light', media = 'screen', forcedColours, ownStyle = '' } = condition;
  const devtools = await page.context().newCDPSession(page);
  await page.emulateMedia({ media, colorScheme: scheme, forcedColors: forcedColours ? 'active' : 'none' });
  await page.setViewportSize({ width, height });
  await devtools.send('Page.setFontSizes', {
    fontSizes: { standard: USUAL_LETTERS * (condition.letters ?? 1) },
  });
  if (zoom) {
    const metrics = { width, height, deviceScaleFactor: zoom, mobile: false };
    await devtools.send('Emulation.setDeviceMetricsOverride', metrics);
  }
  await page.evaluate(async (rules) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(rules);
    document.adoptedStyleSheets = [sheet];
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
  }, ALL_LAID_OUT + ownStyle);
}

for (const { name, path } of pageOfEachKind(allPages)) {
  test(`${name} (${path}) can be used however its reader has set the screen`, async ({ page }) => {
    await page.goto(path);
    await awake(page);
    await unfold(page);
    await awake(page);
    for (const condition of conditions) {
      await setUnder(page, condition);
      const look = looksAt(page);
      // soft: one visit tells all that is wrong with a page, and the test fails all the same
      for (const id of condition.looks)
        expect.soft(await look[id](), `${condition.words}: ${id}`).toEqual([]);
    }
  });
}

/** Puts something wrong of every sort on a page. */
const spoil = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const faintest = 'light-dark(#ddd, #333)';
    const place = document.createElement('div');
    place.innerHTML = `<svg class="bad" width="200" height="50"><text x="5" y="20" font-size="5">Faint</text><text x="8" y="21">Over it</text><path d="M0 30H200"/></svg>
      <input aria-label="Faint edge"><p id="slow">Slow</p><p id="wide">Wide</p><p id="cut">A line of text that is cut off below</p>
      <p>Under</p><p id="over">Above</p><a href="/">A</a><a href="/learn/">B</a>`;
    const style = (selector: string, rules: Partial<CSSStyleDeclaration>): void => {
      const node = place.querySelector<HTMLElement>(selector);
      if (!node) throw new Error(`spoil: wish ${selector} on the page`);
      Object.assign(node.style, rules);
    };
    style('text', { fill: faintest });
    style('path', { stroke: faintest });
    style('input', { borderColor: faintest });
    style('#slow', { transition: 'opacity 1s' });
    style('#wide', { width: '2000px', color: faintest });
    style('#cut', { height: '6px', overflow: 'hidden' });
    style('#over', { position: 'relative', top: '-2.2em' });
    for (const link of place.querySelectorAll('a')) Object.assign(link.style, { fontSize: '6px' });
    const bar = document.createElement('div');
    Object.assign(bar.style, { position: 'fixed', inset: '0 0 40vh 0' });
    document.querySelector('main')?.append(place);
    document.body.append(bar);
  });

test('each look objects to what it should object to, under each condition', async ({ page }) => {
  await page.goto('/about/');
  await spoil(page);
  for (const condition of conditions) {
    await setUnder(page, condition);
    const found = await page.evaluate(() => ({
      letters: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 18,
      zoom: devicePixelRatio,
      isDark: matchMedia('(prefers-color-scheme: dark)').matches,
      isForced: matchMedia('(forced-colors: active)').matches,
      isPrint: matchMedia('print').matches,
      isSpaced: getComputedStyle(document.body).letterSpacing !== 'normal',
      width: innerWidth,
    }));
    expect(found, condition.words).toEqual({
      letters: condition.media === 'print' ? expect.any(Number) : (condition.letters ?? 1),
      zoom: condition.zoom ?? 1,
      isDark: condition.scheme === 'dark',
      isForced: condition.forcedColours ?? false,
      isPrint: condition.media === 'print',
      isSpaced: condition.ownStyle !== undefined,
      width: condition.width,
    });
    // the system's own colours cannot be spoilt but in a drawing, and white paper stays white
    const look = looksAt(page);
    const sound = condition.forcedColours ? ['colours', 'edges', 'white'] : ['white'];
    for (const id of condition.looks.filter((each) => !sound.includes(each)))
      expect(await look[id](), `${condition.words}: ${id}`).not.toEqual([]);
  }
  await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
  expect(await looksAt(page).white()).not.toEqual([]);
});
