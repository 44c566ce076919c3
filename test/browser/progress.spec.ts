import { openAt, refuseStorage } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/traceability/measuring-is-comparing/';
const mark = `[data-lesson="${LESSON.slice('/learn/'.length, -1)}"]`;

test('a lesson that was opened is begun, one called finished is finished, and both can be forgotten', async ({
  page,
}) => {
  await page.goto('/learn/');
  await expect(page.getByRole('status')).toContainText('No lesson begun yet');
  await expect(page.getByRole('button', { name: 'Forget my progress' })).toBeDisabled();
  await openAt(page, LESSON);
  await page.goto('/learn/');
  await expect(page.locator(mark)).toHaveText('begun');
  await page.goto(LESSON);
  await page.getByRole('button', { name: 'I have finished this lesson' }).click();
  await expect(page.getByRole('button', { name: 'Not finished after all' })).toBeVisible();
  await page.goto('/learn/');
  await expect(page.locator(mark)).toHaveText('finished');
  await expect(page.getByRole('status')).toContainText(/^1 of \d+ lessons finished/);
  page.on('dialog', (dialog) => dialog.accept());
  await page.getByRole('button', { name: 'Forget my progress' }).click();
  await expect(page.getByRole('status')).toContainText('Forgotten');
  await expect(page.locator(mark)).toHaveText('');
  expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([]);
});

test('what is not confirmed is not forgotten', async ({ page }) => {
  await openAt(page, LESSON);
  await page.goto('/learn/');
  page.on('dialog', (dialog) => dialog.dismiss());
  await page.getByRole('button', { name: 'Forget my progress' }).click();
  await expect(page.locator(mark)).toHaveText('begun');
});

test('a browser that keeps nothing is told of, on both pages, and does no harm', async ({ page }) => {
  await refuseStorage(page);
  await page.goto('/learn/');
  await expect(page.getByRole('status')).toContainText('This browser keeps nothing');
  await page.goto(LESSON);
  await expect(page.locator('.progress-foot [role="status"]')).toContainText('This browser keeps nothing');
  await page.getByRole('button', { name: 'I have finished this lesson' }).click();
  await expect(page.locator('.progress-foot [role="status"]')).toContainText('finished');
});

test('lessons lead from the first to the last and back, across tracks', () => {
  const neighbour = (html: string, rel: string): string | undefined =>
    new RegExp(`<a rel="${rel}" href="([^"]+)"`).exec(html)?.[1];
  const lessons = new Map(
    pages.filter(({ path }) => /^\/learn\/[^/]+\/[^/]+\/$/.test(path)).map(({ path, html }) => [path, html]),
  );
  const first = [...lessons].filter(([, html]) => neighbour(html, 'prev') === undefined);
  expect(first).toHaveLength(1);
  const walked: string[] = [];
  for (let path = first[0]?.[0]; path !== undefined; path = neighbour(lessons.get(path) ?? '', 'next')) {
    const before = walked.at(-1);
    expect(neighbour(lessons.get(path) ?? '', 'prev')).toBe(before);
    walked.push(path);
  }
  expect(walked.toSorted()).toEqual([...lessons.keys()].toSorted());
});
