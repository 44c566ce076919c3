import type { Locator, Page } from '@playwright/test';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

/** What a screen reader is handed of a place that speaks: whose it is, how it speaks, and what stands in it. */
interface Spoken {
  readonly element: number | undefined;
  readonly live: unknown;
  readonly text: string;
}

/** The places of the page that speak by themselves, as the browser lists them for a screen reader. */
async function speaking(page: Page): Promise<readonly Spoken[]> {
  const devtools = await page.context().newCDPSession(page);
  const { nodes } = await devtools.send('Accessibility.getFullAXTree');
  await devtools.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const textOf = (id: string): string => {
    const node = byId.get(id);
    if (node?.role?.value === 'StaticText') return String(node.name?.value ?? '');
    return (node?.childIds ?? []).map(textOf).join('');
  };
  return nodes
    .filter((node) => node.role?.value === 'status' && node.ignored !== true)
    .map((node) => ({
      element: node.backendDOMNodeId,
      live: node.properties?.find(({ name }) => name === 'live')?.value.value,
      text: textOf(node.nodeId),
    }));
}

/** A field of each sort, with a text that it cannot take. */
const fields: readonly (readonly [path: string, field: (page: Page) => Locator, nonsense: string])[] = [
  [
    '/learn/traceability/the-chain-to-the-definition/',
    (page) => page.locator('.rungs input[type="text"]').first(),
    'x',
  ],
  ['/bench/', (page) => page.getByLabel('Input stands at most'), 'much'],
  ['/reference/formulas/levels/', (page) => page.locator('.formula-entry input').first(), 'watt'],
];

for (const [path, fieldOf, nonsense] of fields) {
  test(`${path}: what is wrong with a text is told while it is typed, politely and by one place alone`, async ({
    page,
  }) => {
    await openAt(page, path);
    const field = fieldOf(page);
    await field.scrollIntoViewIfNeeded();
    const before = await speaking(page);
    await field.fill(nonsense);
    await expect(field).toHaveAttribute('aria-invalid', 'true');
    const told = `“${nonsense}”`;
    // later than any announcer rests
    await page.waitForTimeout(800);
    const [place, ...others] = (await speaking(page)).filter(({ text }) => text.includes(told));
    expect(others, 'told twice').toEqual([]);
    expect(place?.live).toBe('polite');
    const same = before.find(({ element }) => element === place?.element);
    expect(same?.text, 'the place was there before its words').toBe('');
    // and it is what the field is described by
    await expect(field).toHaveAccessibleDescription(new RegExp(told));
  });
}
