import { attributeValues } from '../site/links.ts';
import { drag, openAt, search } from './reader.ts';
import { expect, pages, test } from './site.ts';

const BLOCKS = '/learn/traceability/blocks-and-warm-hands/';
const nb = '\u00a0';

test('every state that the lesson on blocks invites to opens the figure, and shows something else', async ({
  page,
}) => {
  const html = pages.find(({ path }) => path === BLOCKS)?.html ?? '';
  const hrefs = [...new Set(attributeValues(html, ['href']).filter((href) => href.startsWith('?')))];
  expect(hrefs.length).toBeGreaterThan(7);
  await openAt(page, BLOCKS);
  const usual = await page.locator('#figure .answers').innerText();
  for (const href of hrefs) {
    await openAt(page, `${BLOCKS}${href}`);
    await expect(page.locator('#figure .caution')).toHaveCount(0);
    await expect(page.locator('#figure .answers')).not.toHaveText(usual);
    await expect(page.locator('#figure .answers')).not.toContainText('Not worked out yet');
  }
});

test('an end that is pulled warms its side, and the address follows', async ({ page }) => {
  await openAt(page, BLOCKS);
  await drag(page.locator('.plot-wide [data-handle="single"]'), { x: 100 });
  const field = page.getByRole('textbox', { name: 'Temperature of the single block' });
  await expect.poll(async () => Number(await field.inputValue())).toBeGreaterThan(20.5);
  const celsius = await field.inputValue();
  await expect.poll(() => search(page)).toBe(`?tb=${celsius}&v=1`);
});

test('typing and choosing: as warm as the plate the claim holds; the grade alone has a worst case', async ({
  page,
}) => {
  await openAt(page, BLOCKS);
  const answers = page.locator('#figure .answers dt');
  await expect(answers.nth(1)).toHaveText('The claim is too narrow');
  await page.getByRole('textbox', { name: 'Temperature of the stack' }).fill('20');
  await expect(answers.nth(0)).toHaveText(`+0.07${nb}µm`);
  await expect(answers.nth(1)).toHaveText('The claim holds');
  await page.getByLabel('Counted of the blocks').selectOption('The limits of their grade');
  await expect(answers.nth(3)).toHaveText(`\u22121.70 to +1.74${nb}µm`);
  await expect(answers.nth(4)).toHaveText(`\u22120.97 to +1.01${nb}µm`);
  await page.getByText('Each block, and what it is made of').first().click();
  await page.getByRole('textbox', { name: 'The single block grows by' }).fill('a lot');
  await expect(page.getByText(/a growth in each kelvin is expected/).first()).toBeVisible();
});
