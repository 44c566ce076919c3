import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { code, filesBelow, type SourceFile } from './sources.ts';

const WRITES = /^to(Fixed|Precision|Exponential)$/;

/** Whether what a call gives becomes a number again before it leaves the expression: that rounds, and writes nothing. */
function isNumberAgain(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isCallExpression(parent) && parent.expression.getText() === 'Number') return true;
  return ts.isExpression(parent) && !ts.isArrowFunction(parent) && isNumberAgain(parent);
}

/** Places that make digits of a number by themselves, as `file:line`. Of an Astro file the lines are read as text. */
function digitsMade({ path, text }: SourceFile): readonly string[] {
  if (path.endsWith('.astro'))
    return text
      .split('\n')
      .flatMap((line, n) => (/\.to(Fixed|Precision|Exponential)\(/.test(line) ? [`${path}:${n + 1}`] : []));
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true, kind);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const asked = ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression);
    if (asked && WRITES.test(node.expression.name.text) && !isNumberAgain(node))
      found.push(`${path}:${source.getLineAndCharacterOfPosition(node.expression.name.getStart()).line + 1}`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const made = (text: string, path = 'a.ts'): number => digitsMade({ path, text, lines: 1 }).length;

describe('digits made of a number', () => {
  test.each([
    ["const a = b.toFixed(1) + ' kB';", 'a.ts'],
    ["const a = b.toExponential(2).split('e')[0];", 'a.ts'],
    ['const a = (b / 2).toPrecision(3).length;', 'a.ts'],
    ['const A = () => <p>{b.toFixed(2)}</p>;', 'a.tsx'],
    ['const a = Number(c) + b.toFixed(2);', 'a.ts'],
    ['<p>{b.toFixed(2)}</p>', 'a.astro'],
  ])('are found in `%s`', (text, path) => expect(made(text, path)).toBe(1));

  test.each([
    'const a = Number(b.toFixed(2));',
    "const a = Number(b.toExponential(2).split('e')[1]);",
    'const a = Number((b * 2).toPrecision(3)) / 2;',
  ])('are not seen where they are a number again: `%s`', (text) => expect(made(text)).toBe(0));
});

/** Folders whose digits no reader of the site sees: the sums, and what the build tells. */
const ELSEWHERE = /^src\/(text|compute|build)\//;
/** Where digits are made to be counted. */
const COUNTED: Readonly<Record<string, string>> = {
  'src/checks/summary.ts': 'how many digits a printed value has',
  'src/questions/bank/write.ts': 'how many digits a drawn power has',
};

test('numbers become text in src/text alone', () => {
  const found = filesBelow('src', code)
    .filter(({ path }) => !ELSEWHERE.test(path))
    .flatMap(digitsMade);
  const file = (place: string): string => place.replace(/:\d+$/, '');
  expect(found.filter((place) => !Object.hasOwn(COUNTED, file(place)))).toEqual([]);
  expect(
    Object.keys(COUNTED).filter((path) => found.filter((place) => file(place) === path).length !== 1),
  ).toEqual([]);
});
