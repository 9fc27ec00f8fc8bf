import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** Made or fetched, never written by a person. */
const NOT_OURS = new Set(['node_modules', '.git', '.build', 'out']);

/** Every file of the repository, from its root, with `/`, in a fixed order. */
export function allFiles(folder = ROOT): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !(folder === ROOT && NOT_OURS.has(entry.name)))
    .flatMap((entry) => (entry.isDirectory() ? allFiles(join(folder, entry.name)) : [relative(ROOT, join(folder, entry.name)).replaceAll('\\', '/')]))
    .sort();
}

export const readSource = (file: string): string => readFileSync(join(ROOT, file), 'utf8');

export const parse = (file: string, text = readSource(file)): ts.SourceFile => ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);

/** Every module that a file names, in whatever way: imports and exports, of types too, `import()` as a call and as a type. */
export function importsOf(source: ts.SourceFile): string[] {
  const found: string[] = [...source.referencedFiles, ...source.typeReferenceDirectives].map((reference) => reference.fileName);
  const text = (node: ts.Node | undefined): void => {
    if (node === undefined) return;
    // A module named by a figure of speech can't be held to an order.
    found.push(ts.isStringLiteralLike(node) ? node.text : `(${node.getText(source)})`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) text(node.moduleSpecifier);
    else if (ts.isImportTypeNode(node)) text(ts.isLiteralTypeNode(node.argument) ? node.argument.literal : node.argument);
    else if (ts.isExternalModuleReference(node)) text(node.expression);
    else if (ts.isCallExpression(node) && (node.expression.kind === ts.SyntaxKind.ImportKeyword || node.expression.getText(source) === 'require')) text(node.arguments[0]);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
