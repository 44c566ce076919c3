import { existsSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { AddressSpec, Fields } from '../../src/address/field-spec.ts';
import type { SettingsWords } from '../../src/widgets/parts/SettingRow.tsx';

const folder = 'src/widgets';

interface Widget {
  readonly name: string;
  readonly fields: Fields;
  readonly words: SettingsWords;
}

const isSpec = (value: unknown): value is AddressSpec =>
  typeof value === 'object' && value !== null && 'fields' in value && 'version' in value;

/** Every widget whose controls are a table of settings: the fields of its specification, and the words beside them. */
async function widgets(): Promise<readonly Widget[]> {
  const names = readdirSync(folder).filter((name) => existsSync(`${folder}/${name}/spec.ts`));
  const found = await Promise.all(
    names.map(async (name): Promise<Widget | undefined> => {
      const [spec, words] = await Promise.all([
        import(`../../src/widgets/${name}/spec.ts`) as Promise<object>,
        import(`../../src/widgets/${name}/strings.ts`) as Promise<{ strings?: { settings?: SettingsWords } }>,
      ]);
      const fields = Object.values(spec).find(isSpec)?.fields;
      const settings = words.strings?.settings;
      return fields && settings?.units ? { name, fields, words: settings } : undefined;
    }),
  );
  return found.filter((one) => one !== undefined);
}

const all = await widgets();
/** The branches of the tree are opened in the figure itself, and have their words there. */
const inFigure = ['unit-tree'];

test('most widgets have a table of settings', () => {
  expect(all.length).toBeGreaterThan(15);
});

test.each(all)('$name says the unit of each number that can be set', ({ fields, words }) => {
  const numbers = Object.keys(fields).filter((name) => fields[name]?.type === 'number');
  expect(numbers.filter((name) => !Object.hasOwn(words.units, name))).toEqual([]);
});

test.each(all.filter(({ name }) => !inFigure.includes(name)))(
  '$name has words for each code that can be chosen',
  ({ fields, words }) => {
    const without = Object.entries(fields).flatMap(([name, field]) =>
      field.type === 'choice'
        ? Object.keys(field.choices)
            .filter((code) => !words.choices[name]?.[code])
            .map((code) => `${name}: ${code}`)
        : [],
    );
    expect(without).toEqual([]);
  },
);

test.each(all)('$name has no words for what nobody can set', ({ fields, words }) => {
  const named = [...Object.keys(words.units), ...Object.keys(words.choices)];
  expect(named.filter((name) => !Object.hasOwn(fields, name))).toEqual([]);
});
