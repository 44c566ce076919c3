import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { allPages, expect, test } from './site.ts';

const questionPages = allPages.filter(({ path }) => path.startsWith('/practice/q/'));
/** The first question page whose form has something in it. */
const pageWith = (part: string): string => {
  const found = questionPages.find(({ html }) => html.includes(part));
  if (found === undefined) throw new Error(`practice: wish a question with ${part}`);
  return found.path;
};

const open = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await awake(page);
};
const rightText = (page: Page): Promise<string> => page.locator('details.answer strong').first().innerText();
const reply = (page: Page) => page.locator('.ask-form .choice-reply');
const verdict = (page: Page) => reply(page).getByRole('group', { name: /^(Right|Not right)/ });

/** Chooses the right option, or the first that is wrong, and checks. */
async function answer(page: Page, isRight: boolean): Promise<void> {
  await page.locator('details.answer').evaluate((details: HTMLDetailsElement) => {
    details.open = true;
  });
  const right = await rightText(page);
  const options = page.locator('.ask-options label');
  const field = page.getByRole('textbox', { name: 'Your answer' });
  if ((await field.count()) > 0) await field.fill(isRight ? right : '123456');
  else if ((await options.count()) > 0) {
    const texts = await options.allInnerTexts();
    await options.nth(texts.findIndex((text) => (text.trim() === right.trim()) === isRight)).click();
  } else expect(isRight, 'an order as it is shown is never the right one').toBe(false);
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(reply(page)).toContainText(isRight ? /^Right\./ : /^Not right/);
}

test('a choice is answered by keys alone: a digit chooses, Enter checks', async ({ page }) => {
  await open(page, pageWith('class="ask-options"'));
  await page.locator('.ask-options input').first().focus();
  await page.keyboard.press('2');
  await expect(page.locator('.ask-options input').nth(1)).toBeChecked();
  await page.keyboard.press('Enter');
  await expect(reply(page)).toContainText(/^(Right|Not right)/);
  await expect(verdict(page), 'the focus is where it is said').toBeFocused();
  await expect(
    page.locator('[role="status"], [role="alert"], [aria-live]').filter({ hasText: /^(Right|Not right)/ }),
    'and it is not spoken beside that',
  ).toHaveCount(0);
  await page.keyboard.press('Enter');
  await expect(page.locator('.ask-options input:checked')).toHaveCount(0);
  await expect(page.locator('.ask'), 'back at the question').toBeFocused();
});

test('nothing chosen is told and no answer', async ({ page }) => {
  await open(page, pageWith('class="ask-options"'));
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(reply(page).getByRole('status'), 'spoken, since the focus stays').toHaveText(
    'Nothing is chosen yet.',
  );
});

test('a wrong answer is told by its mistake and the lesson that puts it right', async ({ page }) => {
  await open(page, pageWith('class="ask-options"'));
  await answer(page, false);
  await expect(page.getByText('The mistake behind it:')).toBeVisible();
  await expect(page.locator('.ask-form a[href*="/learn/"]').first()).toBeVisible();
});

test('a typed answer is taken with its unit, and what is no number is told', async ({ page }) => {
  await open(page, pageWith('class="ask-typed"'));
  const field = page.getByRole('textbox', { name: 'Your answer' });
  await field.fill('about ten');
  await field.press('Enter');
  await expect(reply(page)).toContainText('is not a number');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await page.locator('details.answer summary').click();
  await field.fill(await rightText(page));
  await field.press('Enter');
  await expect(reply(page)).toContainText(/^Right\./);
});

test('an order is changed by keys, each move is spoken, and the focus stays with the item', async ({
  page,
}) => {
  await open(page, pageWith('class="ask-order"'));
  const first = await page.locator('.ask-order li').first().locator('span').first().innerText();
  await page.getByRole('button', { name: `Move down: ${first}` }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.ask-order li').nth(1)).toContainText(first);
  await expect(page.locator('.ask-order [role="status"]')).toContainText(/^Now 2 of \d\.$/);
  await expect(page.getByRole('button', { name: `Move down: ${first}` })).toBeFocused();
  await expect(reply(page), 'Enter on a button does not hand in').toHaveText('');
});

test('a place is pointed at, or chosen from the list', async ({ page }) => {
  await open(page, pageWith('class="places"'));
  await page.locator('.place').nth(1).click();
  await expect(page.locator('.ask-options input').nth(1)).toBeChecked();
  await page.locator('.ask-options input').first().check();
  await expect(page.locator('.place').first()).toHaveClass(/place-chosen/);
});

test('an address holds the numbers of a question', async ({ page }) => {
  const path = pageWith('Other numbers');
  await open(page, path);
  const before = await page.locator('.ask legend, details.answer').allInnerTexts();
  await page.getByRole('button', { name: 'Other numbers' }).click();
  await expect(page).toHaveURL(/\?s=2&v=1$/);
  const there = await page.locator('.ask legend, details.answer').allInnerTexts();
  expect(there).not.toEqual(before);
  await expect(page.locator('.ask'), 'the new question is read out').toBeFocused();
  await open(page, `${path}?s=2&v=1`);
  expect(await page.locator('.ask legend, details.answer').allInnerTexts()).toEqual(there);
});

test('an address with numbers that are none says so, and shows the first', async ({ page }) => {
  await open(page, `${pageWith('Other numbers')}?s=many&v=1`);
  await expect(page.locator('.problem').first()).toContainText('Seed of the numbers');
});

test('a round asks in turn, brings a miss back at the end, and the browser knows when to ask again', async ({
  page,
}) => {
  await open(page, '/practice/ratios/');
  await page.getByRole('button', { name: /^Begin with \d+ questions$/ }).click();
  await expect(page.getByText(/^Question 1 of/)).toBeVisible();
  await expect(page.locator('.ask')).toBeFocused();
  await expect(page.locator('.ask')).toHaveAccessibleDescription(/^Question 1 of \d+ /);
  const count = Number(/of (\d+)/.exec(await page.getByText(/^Question 1 of/).innerText())?.[1]);
  await answer(page, false);
  await expect(reply(page).getByRole('status')).toHaveText(
    'It comes back at the end of this round, and tomorrow.',
  );
  await expect(page.getByText(`Question 1 of ${count + 1}`)).toBeVisible();
  await page.getByRole('button', { name: 'Next question' }).click();
  await expect(page.getByText(`Question 2 of ${count + 1}`)).toBeVisible();
  await page.getByRole('button', { name: 'Stop here' }).click();
  await expect(page.getByRole('region', { name: 'Questions in turn' })).toBeFocused();
  await page.goto('/practice/');
  await awake(page);
  await expect(page.getByText('1 answer to 1 question, noted in this browser')).toBeVisible();
  await expect(page.locator('.practice-topics li', { hasText: 'Ratios' })).toContainText(
    /0 due today, \d+ never asked, 1 resting/,
  );
});

/** How many answers this browser has noted: noting one takes a moment after it was judged. */
const noted = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await asked(indexedDB.open('how-sure-is-a-watt'));
    const count = await asked(database.transaction('practice').objectStore('practice').count());
    database.close();
    return count;
  });

test('what was practised goes into a file, is forgotten, and comes back from the file', async ({ page }) => {
  await open(page, pageWith('class="ask-options"'));
  await answer(page, true);
  await expect.poll(() => noted(page)).toBe(1);
  const begun = {
    version: 1,
    seed: 7,
    length: 5,
    topics: '',
    count: 5,
    hasClock: false,
    spentMs: 0,
    answers: [],
  };
  await page.evaluate((text) => localStorage.setItem('practice:paper:a1', text), JSON.stringify(begun));
  await open(page, '/practice/');
  await expect(page.getByText('1 mock paper is begun and not handed in.')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const file = await (await saving).path();
  expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ file: 'how-sure-is-a-watt', version: 1 });
  page.on('dialog', (dialog) => dialog.accept());
  await page.getByRole('button', { name: 'Forget all answers' }).click();
  await expect(page.getByText('Nothing practised yet.')).toBeVisible();
  await expect(page.getByText('1 mock paper is begun'), 'with the papers').toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'What you have practised' })).toBeFocused();
  await page.getByLabel('Add from a file').setInputFiles({
    name: 'practice.json',
    mimeType: 'application/json',
    buffer: readFileSync(file),
  });
  await expect(page.getByText('Added 1 answer to 1 question')).toBeVisible();
  await expect(page.getByText('1 mock paper that is not handed in was added.')).toBeVisible();
  await page.reload();
  await awake(page);
  await expect(page.getByText('1 answer to 1 question, noted')).toBeVisible();
});

test('a browser that keeps nothing lets one practise all the same, and says so', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await open(page, pageWith('class="ask-options"'));
  await expect(page.getByText('Your answers could not be noted')).toBeVisible();
  await answer(page, true);
  await open(page, '/practice/revision/');
  await expect(page.getByRole('button', { name: /^Begin with/ })).toBeVisible();
});

test('a paper is answered in any order, handed in, marked and looked through again', async ({ page }) => {
  await open(page, '/practice/paper/?s=7&n=6&v=1');
  await page.getByLabel('a minute and a half for each question').check();
  await page.getByRole('button', { name: 'Begin the paper' }).click();
  await expect(page.getByRole('heading', { name: 'Paper 7' })).toBeFocused();
  await expect(page.locator('.paper > li')).toHaveCount(6);
  await expect(page.getByText('9 minutes left').first()).toBeVisible();
  await expect(page.getByText('6 questions without an answer.')).toBeVisible();
  const stems = await page.locator('.paper legend').allInnerTexts();
  await page.locator('.paper .ask-options').last().locator('input').first().check();
  await expect(page.getByText('5 questions without an answer.')).toBeVisible();
  await page.reload();
  await awake(page);
  await expect(page.getByText('1 of 6 answered. Its clock goes on with 9 minutes left.')).toBeVisible();
  await page.getByRole('button', { name: 'Go on with it' }).click();
  await expect(page.locator('.paper .ask-options').last().locator('input').first()).toBeChecked();
  await expect(page.locator('.paper legend'), 'it is the same paper').toHaveText(stems);
  await expect(page).toHaveURL(/\?s=7&n=6/);
  const other = await page.context().newPage();
  await open(other, '/practice/paper/');
  await other.getByRole('button', { name: 'Go on with it' }).click();
  await expect(page.getByText('Another tab has gone on with this paper.')).toBeVisible();
  await page.getByRole('button', { name: 'Show it as the other tab has it' }).click();
  await expect(page.getByText('are kept in this browser')).toBeVisible();
  await expect(other.getByText('Another tab has gone on with this paper.')).toBeVisible();
  await other.close();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.paper legend').first(), 'it can be printed as it is').toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await page.getByRole('button', { name: 'Hand in' }).click();
  await expect(page.getByText(/^[01] of 6 right\.$/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Paper 7' })).toHaveAccessibleDescription(
    /^[01] of 6 right\.$/,
  );
  await expect(page.locator('.paper').getByText('Not answered.')).toHaveCount(5);
  await expect(page.locator('.paper details')).toHaveCount(6);
  await page.getByRole('button', { name: 'A new paper' }).click();
  await expect(page.getByRole('region', { name: 'A mock paper' })).toBeFocused();
  await open(page, '/practice/paper/?s=7&n=6&v=1');
  await expect(page.getByRole('button', { name: 'Go on with it' }), 'it was handed in').toHaveCount(0);
  await page.getByRole('button', { name: 'Begin the paper' }).click();
  await expect(page.locator('.paper legend'), 'the same number is the same paper').toHaveText(stems);
});

test('a club prints ten papers that differ, with the answers on sheets of their own', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('numbers:decimal-sign', 'comma'));
  await open(page, '/practice/worksheet/?s=40&n=8&c=10&a=a&v=1');
  await expect(page.locator('.printed')).toHaveCount(20);
  await expect(page.locator('.printed').filter({ hasText: /\d,\d/ }).first(), 'with a comma').toBeVisible();
  const printed = (await page.locator('.printed').allInnerTexts()).join('\n');
  expect(printed.replace(/No\. [\d.]+/g, '')).not.toMatch(/\d\.\d/);
  await expect(page.locator('.printed').first().locator('.paper > li')).toHaveCount(8);
  const papers = await page
    .locator('.printed')
    .filter({ hasText: /^Paper/ })
    .allInnerTexts();
  expect(new Set(papers.map((text) => text.replace(/^Paper \d+/, ''))).size).toBe(10);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
  const breaks = await page
    .locator('.printed')
    .evaluateAll((all) => all.map((each) => getComputedStyle(each).breakBefore));
  expect(breaks.slice(1).every((each) => each === 'page')).toBe(true);
});

test('every question page says what it is worth and leads to its topic', () => {
  expect(questionPages.length).toBeGreaterThan(50);
  for (const { path, html } of questionPages) {
    expect(html, path).toContain('not those of any examination');
    expect(html, path).toMatch(/In the CEPT T\/R 61-02 syllabus|Beyond the examination syllabus/);
    expect(html, path).toMatch(/href="\/practice\/[a-z]+\/"/);
  }
});
