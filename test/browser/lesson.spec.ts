import { attributeValues } from '../site/links.ts';
import { awake } from './awake.ts';
import { openAt } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/traceability/the-chain-to-the-definition/';
/** The states that the lesson invites to, as its links say. */
const states = attributeValues(pages.find(({ path }) => path === LESSON)?.html ?? '', ['href'])
  .filter((href) => href.startsWith('?'))
  .map((href) => href.slice(1).replace('#figure', ''));
const labels: Readonly<Record<string, string>> = {
  na: 'National standard',
  la: 'Calibration laboratory',
  me: 'The meter that was lent',
  mi: 'Mismatch',
  pa: '20 decibel pad',
  co: '3 metres of thin coax',
};

test('the lesson invites to several states of its figure', () => {
  expect(states.length).toBeGreaterThanOrEqual(5);
});

for (const state of states) {
  test(`the invitation to ${state} opens the figure in that state`, async ({ page }) => {
    await openAt(page, LESSON);
    await page.locator(`a[href="?${state}#figure"]`).click();
    await page.waitForURL(`**?${state}#figure`);
    await awake(page);
    await expect(page.locator('.reading-band .caution')).toHaveCount(0);
    for (const [key, value] of new URLSearchParams(state)) {
      const rung = labels[key];
      if (rung === undefined) continue;
      const slider = page.getByRole('slider', { name: `${rung}: drag what it adds` });
      await expect(slider).toHaveValue(value);
    }
    if (state.includes('cu=1')) await expect(page.locator('.band-wide .band-curve').first()).toBeVisible();
    await expect(page.locator('.band-wide')).toBeInViewport();
  });
}
