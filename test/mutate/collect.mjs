/**
 * Stands in for vitest's `describe` and `it` in the bundle of tests: they only collect, so that every mutant can run those
 * that reach it.
 *
 * @typedef {(...values: unknown[]) => unknown} Body
 * @typedef {{ name: string, file: string, run: () => unknown }} Collected
 */
const { mutation } = globalThis;
const { expect, tests } = mutation;
/** @type {string[]} */
const path = [];

/** @param {string} name @param {...unknown} rest the body and, before or after it, options */
export function describe(name, ...rest) {
  path.push(name);
  bodyOf(rest)();
  path.pop();
}

/** @param {string} name @param {...unknown} rest the body and, before or after it, options */
export function it(name, ...rest) {
  tests.push({ name: [...path, name].join(' > '), file: mutation.file, run: bodyOf(rest) });
}

/** @param {unknown[]} rest @returns {Body} */
function bodyOf(rest) {
  const body = rest.find((each) => typeof each === 'function');
  if (body === undefined) throw new Error(`a test without a body in ${path.join(' > ')}`);
  return /** @type {Body} */ (body);
}

/** @param {(name: string, body: Body) => void} add */
const rows =
  (add) =>
  /** @param {readonly unknown[]} table */
  (table) =>
  /** @param {string} name @param {...unknown} rest */
  (name, ...rest) => {
    for (const row of table)
      add(`${name} ${JSON.stringify(row) ?? ''}`, () => bodyOf(rest)(...(Array.isArray(row) ? row : [row])));
  };
describe.each = rows(describe);
it.each = rows(it);

export { expect, it as test };
