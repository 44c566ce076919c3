import { rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';
import { strings } from '../../src/widgets/formula-example/strings.ts';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const numberIn = (text: string): number =>
  Number(/[-−]?[\d.]+(?:e-?\d+)?$/.exec(text)?.[0]?.replace('−', '-'));
/** The fields show seven digits: a result made of what they show may differ by as much. */
const SHOWN = 1e-5;

test('a changed number changes the result, and back again brings it back', async ({ page }) => {
  await openAt(page, '/reference/formulas/levels/');
  const row = page.locator('.formula-row', { has: page.locator('code', { hasText: /^powerToLevel$/ }) });
  const result = row.locator('.formula-result');
  const field = row.getByRole('textbox').first();
  const [before, typed] = [await result.innerText(), await field.inputValue()];
  await field.fill('0,2');
  await expect(result).toHaveText(`${strings.result}: 23.0103`);
  await field.fill(typed);
  await expect(result).toHaveText(before);
});

test('a number that the function refuses is told in its words, and kept', async ({ page }) => {
  await openAt(page, '/reference/formulas/levels/');
  const row = page.locator('.formula-row', { has: page.locator('code', { hasText: /^powerToLevel$/ }) });
  const field = row.getByRole('textbox').first();
  await field.fill('-1');
  await expect(row.locator('.problem')).toContainText('-1');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveValue('-1');
  await expect(row.locator('.formula-result')).toHaveText('');
  await field.fill('watt');
  await expect(row.locator('.problem')).toContainText('watt');
});

for (const topic of Object.keys(TOPICS) as TopicId[]) {
  test(`each example on ${topic} is computed again to the result that stands there`, async ({ page }) => {
    await openAt(page, `/reference/formulas/${topic}/`);
    for (const { id, example } of rowsOf(topic)) {
      if (Object.keys(example.given).length === 0) continue;
      const row = page.locator('.formula-row', {
        has: page.getByText(id, { exact: true }).and(page.locator('code')),
      });
      const result = row.locator('.formula-result');
      const before = await result.innerText();
      const field = row.getByRole('textbox').first();
      const typed = await field.inputValue();
      await field.fill('');
      await expect(row.locator('.problem')).not.toBeEmpty();
      await field.fill(typed);
      await expect(row.locator('.problem')).toBeEmpty();
      const wished = numberIn(before);
      const after = numberIn(await result.innerText());
      expect(Math.abs(after - wished), `${id}: ${after}`).toBeLessThanOrEqual(SHOWN * Math.abs(wished));
    }
  });
}
