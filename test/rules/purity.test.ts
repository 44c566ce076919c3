import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesBelow, type SourceFile } from './sources.ts';

const parsed = ({ path, text }: SourceFile): ts.SourceFile =>
  ts.createSourceFile(
    path,
    text,
    ts.ScriptTarget.ESNext,
    true,
    path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

/** Functions of `Math` have no side effect and bundlers know it. */
const isMath = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && /^Math\.\w+$/.test(node.expression.getText());

/** What runs when the file is imported and may keep a bundler from leaving it out: calls, `new`, loops and the like. */
function runsOnImport(file: SourceFile): readonly string[] {
  const source = parsed(file);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) || ts.isTypeNode(node)) return;
    const runs = ts.isCallExpression(node) || ts.isNewExpression(node) || ts.isTaggedTemplateExpression(node);
    if (runs && !isMath(node)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      found.push(`${file.path}:${line + 1}: ${node.getText().slice(0, 60)}`);
    }
    ts.forEachChild(node, visit);
  };
  for (const statement of source.statements) {
    const declares = ts.isVariableStatement(statement) || ts.isClassDeclaration(statement);
    const silent =
      ts.isImportDeclaration(statement) ||
      ts.isExportDeclaration(statement) ||
      ts.isFunctionDeclaration(statement);
    const typesOnly = ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement);
    if (declares) visit(statement);
    else if (!silent && !typesOnly && !ts.isModuleDeclaration(statement)) {
      found.push(`${file.path}: ${statement.getText().slice(0, 60)}`);
    }
  }
  return found;
}

const file = (text: string): SourceFile => ({ path: 'a.ts', text, lines: 1 });

describe('what runs on import', () => {
  test.each([
    'const a = new Map();',
    'const a = make();',
    'for (;;) {}',
    'const a = [1].map(String);',
    'run();',
  ])('is found in `%s`', (text) => expect(runsOnImport(file(text))).toHaveLength(1));

  test.each([
    'const a = 2 * Math.PI;',
    'const f = () => make();',
    'const a = { b: [1, 2] } as const;',
    'const a = Math.sqrt(3);',
  ])('is not seen in `%s`', (text) => expect(runsOnImport(file(text))).toEqual([]));

  test.each(['src/compute', 'src/text'])(
    'is nothing in %s, so that a page carries only what it uses',
    (folder) => {
      expect(filesBelow(folder, ['.ts']).flatMap(runsOnImport)).toEqual([]);
    },
  );
});

describe('the computation', () => {
  /** Names of the world outside; a comment may speak of them. */
  const outside =
    /\b(Math\.random|Date\b|performance|console|window|document|globalThis|process|localStorage|fetch)\b/;
  const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');

  test('asks no clock, chance, screen or log', () => {
    const files = filesBelow('src/compute', ['.ts']);
    expect(files.filter(({ text }) => outside.test(withoutComments(text))).map(({ path }) => path)).toEqual(
      [],
    );
  });
});

describe('rendered code', () => {
  test('uses no Intl and no locale, which differ from machine to machine', () => {
    const files = filesBelow('src', ['.ts', '.tsx', '.astro', '.mdx']);
    const local = /\bIntl\.|\.toLocale\w+\(|\.localeCompare\(/;
    expect(files.filter(({ text }) => local.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
