import { builtPages } from '../site/pages.ts';
import { underBase } from '../site/under-base.mjs';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const start = process.env.SITE_UNDER_BASE ?? '';
const pages = builtPages(underBase.directory);
/** The start page, the page for wrong addresses, and the first few others that have islands. */
const sample = [
  ...pages.filter(({ path }) => path === '/' || path === '/404.html'),
  ...pages.filter(({ path, html }) => path !== '/' && html.includes('<astro-island')).slice(0, 4),
];

for (const { path } of sample) {
  test(`${path} works under a path of its host`, async ({ page, request }) => {
    await page.goto(start + path.slice(1));
    await awake(page);
    const links = await page
      .locator('a[href]')
      .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
    const inside = [...new Set(links.map((link) => link.replace(/#.*$/, '')))].filter(
      (link) => !/^mailto:/.test(link),
    );
    expect(
      inside.filter((link) => !link.startsWith(start)),
      'links out of the site',
    ).toEqual([]);
    for (const link of inside) expect((await request.get(link)).status(), link).toBe(200);
  });
}

test('a wrong address under the path gets the page for wrong addresses, which offers the page that was meant', async ({
  page,
  request,
}) => {
  const answer = await request.get(`${start}no/such/page/`);
  expect(answer.status()).toBe(404);
  const body = await answer.text();
  expect(body).toContain(`href="${new URL(start).pathname}"`);
  // as what it is, a page that is not there, the browser would complain of it
  await page.route('**/club-transmitter),*', (route) => route.fulfill({ body, contentType: 'text/html' }));
  await page.goto(`${start}examples/club-transmitter),?pa=0.1&v=1`);
  await page.locator('#near a:visible').click();
  await expect(page).toHaveURL(`${start}examples/club-transmitter/?pa=0.1&v=1`);
});
