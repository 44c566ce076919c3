import { openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const TRIES = '/learn/stacking/a-million-tries/';
const nb = '\u00a0';

test('an address opens what it asks for once that has been tried, and another seed tries it anew', async ({
  page,
}) => {
  await openAt(page, `${TRIES}?m=l&iv=s&sd=7&v=1`);
  const figure = page.locator('#figure');
  await expect(figure.getByText(`100${nb}000 trials, random numbers from seed 7.`)).toBeVisible();
  await expect(figure.locator('.answers dt').nth(3)).toHaveText('Propagation will not do');
  await figure.getByRole('button', { name: 'Try with other random numbers' }).click();
  await expect(figure.getByText(`100${nb}000 trials, random numbers from seed 8.`)).toBeVisible();
  await expect.poll(() => search(page)).toBe('?m=l&iv=s&sd=8&v=1');
});

test('a run that is stopped shows what it has come to, and says so', async ({ page }) => {
  await openAt(page, TRIES);
  const figure = page.locator('#figure');
  await page.getByLabel('Trials', { exact: true }).selectOption('A million');
  // From within the page: on a busy machine a click from outside might come when the run is over.
  await page.evaluate(async () => {
    for (;;) {
      const button = document.querySelector<HTMLButtonElement>('#figure [role="status"] + p > button');
      if (button?.textContent === 'Stop') return button.click();
      await new Promise(requestAnimationFrame);
    }
  });
  await expect(figure.getByText(/^Stopped; what is shown are/)).toBeVisible();
  await expect(figure.getByRole('button', { name: 'Try with other random numbers' })).toBeVisible();
});
