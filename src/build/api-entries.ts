import { relative } from 'node:path';
import ts from 'typescript';

/** A public name of the computation. */
export interface ApiEntry {
  readonly name: string;
  /** File that defines it, from the folder of the door: `level.ts`. */
  readonly file: string;
  /** How it is called, or what it consists of. */
  readonly shape: string;
  /** What its docstring says. */
  readonly says: string;
  /** Its tags: `@throws RangeError ...`. */
  readonly tags: readonly string[];
}

const plain = (parts: ts.SymbolDisplayPart[] | undefined): string => ts.displayPartsToString(parts).trim();

/** Calls of a function each, the stated type of anything else. */
function shapeOf(checker: ts.TypeChecker, symbol: ts.Symbol, declared: ts.Declaration): string {
  const calls = checker.getTypeOfSymbolAtLocation(symbol, declared).getCallSignatures();
  const isType = ts.isInterfaceDeclaration(declared) || ts.isTypeAliasDeclaration(declared);
  if (!isType && calls.length > 0) {
    return calls
      .map(
        (call) =>
          `${symbol.name}${checker.signatureToString(call, declared, ts.TypeFormatFlags.NoTruncation)}`,
      )
      .join('\n');
  }
  if (isType || ts.isClassDeclaration(declared)) return declared.getText().replace(/^export\s+/, '');
  return `${symbol.name}: ${checker.typeToString(checker.getTypeOfSymbolAtLocation(symbol, declared), declared)}`;
}

/** Every name that a module exports, in the order of the alphabet. @throws Error if there is no such module */
export function apiEntries(door: string): readonly ApiEntry[] {
  const program = ts.createProgram([door], {
    strict: true,
    noEmit: true,
    allowImportingTsExtensions: true,
    target: ts.ScriptTarget.ESNext,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(door);
  const module = source && checker.getSymbolAtLocation(source);
  if (module === undefined) throw new Error(`apiEntries: wish a module that exports something, got ${door}`);
  const entries = checker.getExportsOfModule(module).flatMap((exported): ApiEntry[] => {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    const [declared] = symbol.declarations ?? [];
    if (declared === undefined) return [];
    return [
      {
        name: exported.name,
        file: relative(new URL('.', `file://${door}`).pathname, declared.getSourceFile().fileName),
        shape: shapeOf(checker, symbol, declared),
        says: plain(symbol.getDocumentationComment(checker)),
        tags: symbol.getJsDocTags(checker).map(({ name, text }) => `@${name} ${plain(text)}`.trim()),
      },
    ];
  });
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1));
}
