import type { Locator, Page } from '@playwright/test';
import { awake } from './awake.ts';
import { search } from './reader.ts';
import { expect, test } from './site.ts';

const lesson = '/learn/traceability/the-chain-to-the-definition/';

const open = async (page: Page, address = '/'): Promise<void> => {
  await page.goto(address);
  await awake(page);
};

const level = (page: Page) => page.locator('.reading-band .answers dt').first();
const field = (page: Page) => page.getByLabel('20 decibel pad: what it adds');
const slider = (page: Page) => page.getByLabel('20 decibel pad: drag what it adds');
const ghosts = (page: Page) => page.locator('.band-ghost:visible');

/** The middle of what a pointer may take hold of, on the screen. */
async function grip(
  page: Page,
  id = 'pad',
): Promise<{ readonly x: number; readonly y: number; readonly handle: Locator }> {
  const handle = page.locator(`[data-handle="${id}"]:visible`);
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('reading band: wish a handle on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, handle };
}

test('a handle pulled outwards widens the band below it, leaves a ghost, and adds nothing to the history', async ({
  page,
}) => {
  await open(page);
  const before = await page.evaluate(() => history.length);
  await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
  const { x, y } = await grip(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y, { steps: 6 });
  await expect(ghosts(page)).toHaveCount(3); // pad, coax, socket
  expect(await search(page), 'the address waits until the handle is let go').toBe('');
  await expect(field(page), 'the table follows while the pointer rests').not.toHaveValue('0.5');
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?pa=0\.\d+&v=1$/);
  expect(await page.evaluate(() => history.length)).toBe(before);
  expect(Number(await field(page).inputValue())).toBeGreaterThan(0.55);
  await expect(level(page)).not.toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
  const pulled = await page.locator('.reading-band').innerText();
  await page.reload();
  await awake(page);
  await expect.poll(() => page.locator('.reading-band').innerText(), 'the same by its address').toBe(pulled);
  await page.getByRole('button', { name: 'Back to the prepared values' }).click();
  await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
  await expect.poll(() => search(page)).toBe('');
});

test('the end of the strip stays under the pointer', async ({ page }) => {
  await open(page);
  const { x, y, handle } = await grip(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const dx of [-30, -10, 25]) {
    await page.mouse.move(x + dx, y, { steps: 3 });
    const box = await handle.boundingBox();
    // half a step of the amount is less than two pixels here
    expect(Math.abs((box?.x ?? 0) + (box?.width ?? 0) / 2 - (x + dx)), `at ${dx}`).toBeLessThan(3);
  }
  await page.mouse.up();
});

test('while a handle is pulled, what is drawn moves and nothing is drawn anew', async ({ page }) => {
  await open(page);
  const { x, y } = await grip(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  // with the first movement the ghosts come
  await page.mouse.move(x + 20, y, { steps: 2 });
  await expect(ghosts(page)).toHaveCount(3);
  const svg = page.locator('.band-wide');
  const made = await svg.evaluateHandle((node) => {
    const names: string[] = [];
    const watch = new MutationObserver((all) => {
      for (const { addedNodes } of all) names.push(...Array.from(addedNodes, ({ nodeName }) => nodeName));
    });
    watch.observe(node, { childList: true, subtree: true });
    return names;
  });
  const before = await svg.innerHTML();
  await page.mouse.move(x + 40, y, { steps: 4 });
  await expect.poll(() => svg.innerHTML()).not.toBe(before);
  expect(await made.jsonValue()).toEqual([]);
  await page.mouse.up();
});

test('a pointer that the browser takes away puts everything back', async ({ page }) => {
  await open(page);
  const { x, y } = await grip(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y, { steps: 4 });
  await expect(level(page)).not.toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
  await page.locator('.band-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
  await expect(ghosts(page)).toHaveCount(0);
  expect(await search(page)).toBe('');
});

test('arrow keys on the slider move the amount by its step and say it in words', async ({ page }) => {
  await open(page);
  await slider(page).focus();
  await page.keyboard.press('ArrowRight');
  await expect(field(page)).toHaveValue('0.51');
  await expect(slider(page)).toHaveAttribute('aria-valuetext', '0.51 decibels');
  await page.keyboard.press('Home');
  await expect(field(page)).toHaveValue(/^0(\.0+)?$/);
  await expect.poll(() => search(page)).toBe('?pa=0&v=1');
});

for (const [text, amount] of [
  ['0,25', '0.25'],
  ['0.25 dB', '0.25'],
  ['±0.25', '0.25'],
] as const) {
  test(`“${text}” typed as an amount is taken as ${amount} dB and left as typed`, async ({ page }) => {
    await open(page);
    await field(page).fill(text);
    await expect.poll(() => search(page)).toBe(`?pa=${amount}&v=1`);
    await expect(field(page)).toHaveValue(text);
    await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.47\u00a0dB');
    await field(page).blur();
    await expect(field(page)).toHaveValue(amount);
  });
}

test('an amount typed key by key stays as typed, and one slid after it takes its place', async ({ page }) => {
  await open(page);
  await field(page).fill('0,1');
  await expect.poll(() => search(page)).toBe('?pa=0.1&v=1');
  for (const [key, so] of [
    ['Backspace', '0,'],
    ['2', '0,2'],
    ['0', '0,20'],
    ['5', '0,205'],
    ['Backspace', '0,20'],
  ] as const) {
    await field(page).press(key);
    await page.waitForTimeout(40);
    await expect(field(page)).toHaveValue(so);
  }
  await slider(page).press('ArrowRight');
  await expect(field(page)).toHaveValue('0.21');
});

for (const text of ['abc', '-1', '99', '']) {
  test(`“${text}” typed as an amount is told beside the field, kept, and changes nothing`, async ({
    page,
  }) => {
    await open(page);
    await field(page).fill(text);
    await expect(field(page)).toHaveAttribute('aria-invalid', 'true');
    await expect(field(page)).toHaveAccessibleDescription(/\S.*\.$/);
    await field(page).blur();
    await expect(field(page)).toHaveValue(text);
    await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
    await slider(page).press('ArrowRight');
    await expect(field(page), 'a change elsewhere replaces it').toHaveValue('0.51');
    await expect(field(page)).not.toHaveAttribute('aria-invalid');
  });
}

test('an address with a state opens in that state, on paper too', async ({ page }) => {
  await open(page, `${lesson}?pa=1.2&cu=1&v=1`);
  await expect(field(page)).toHaveValue('1.2');
  await expect(page.getByLabel('Show the whole distribution as a curve')).toBeChecked();
  await expect(level(page)).toHaveText('27.1\u00a0dBm ±1.4\u00a0dB');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.rungs')).toContainText('±1.2\u00a0dB, limits');
  await expect(page.locator('.band-curve:visible')).toHaveCount(7);
  await expect(page.locator('.band-handle:visible')).toHaveCount(0);
});

for (const [query, told, pad] of [
  ['?pa=zz&v=1', '20 dB pad', '0.5'],
  ['?pa=0.1&me=', 'has lost its end', '0.1'],
  ['?v=9', 'later version', '0.5'],
  ['?zz=1&pa=0.1&v=1', 'zz', '0.1'],
] as const) {
  test(`the damaged address ${query} is told, and the page goes on`, async ({ page }) => {
    await open(page, `/${query}`);
    await expect(page.locator('.reading-band .caution')).toContainText(told);
    await expect(field(page)).toHaveValue(pad);
    expect(await search(page), 'it stays as it came').toBe(query);
    await slider(page).press('ArrowRight');
    await expect.poll(() => search(page)).toMatch(/pa=0\.\d+&.*v=1|pa=0\.\d+&v=1/);
  });
}

test('an address that mail software has escaped opens without a word', async ({ page }) => {
  await open(page, '/?pa%3D0.1&amp;v=1');
  await expect(field(page)).toHaveValue('0.1');
  await expect(page.locator('.reading-band .caution')).toHaveCount(0);
});

test('what changed is spoken once, half a second after the last change', async ({ page }) => {
  await page.clock.install();
  await page.goto('/');
  await page.clock.runFor(2000);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const spoken = page.locator('.reading-band p[aria-live="polite"]');
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const node = document.querySelector('.reading-band p[aria-live="polite"]');
    if (node)
      new MutationObserver(() => {
        if (node.textContent) said.push(node.textContent);
      }).observe(node, {
        childList: true,
        characterData: true,
        subtree: true,
      });
  });
  await expect(spoken).toHaveText('');
  for (let press = 0; press < 4; press += 1) {
    await slider(page).press('ArrowRight');
    await page.clock.runFor(200);
  }
  await expect(spoken).toHaveText('');
  await page.clock.runFor(600);
  await expect(spoken).toHaveText(
    /^27\.10 decibel-milliwatts plus or minus 0\.7\d decibels, .* 20 decibel pad widens it most\.$/,
  );
  expect(await page.evaluate(() => (window as unknown as { said: string[] }).said)).toHaveLength(1);
});

test.describe('by touch', () => {
  test.use({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });

  test('a finger pulls a handle sideways', async ({ page }) => {
    await open(page);
    const { x, y } = await grip(page);
    const devtools = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: number) =>
      devtools.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: at === undefined ? [] : [{ x: at, y }],
      });
    await touch('touchStart', x);
    for (const dx of [5, 15, 30, 40]) await touch('touchMove', x + dx);
    await touch('touchEnd');
    await expect.poll(() => search(page)).toMatch(/^\?pa=0\.\d+&v=1$/);
    expect(Number(await field(page).inputValue())).toBeGreaterThan(0.55);
  });

  test('a finger that goes up from a handle scrolls the page and changes nothing', async ({ page }) => {
    await open(page);
    const { x, y } = await grip(page, 'meter');
    const from = await page.evaluate(() => scrollY);
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    for (let step = 1; step <= 12; step += 1)
      await devtools.send('Input.dispatchTouchEvent', {
        type: 'touchMove',
        touchPoints: [{ x, y: y - 10 * step }],
      });
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(from + 40);
    await expect(level(page)).toHaveText('27.10\u00a0dBm ±0.69\u00a0dB');
    expect(await search(page)).toBe('');
  });
});
