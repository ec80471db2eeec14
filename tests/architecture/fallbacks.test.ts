import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';

/** What a missing key must not turn into: nothing, no text, no number. */
const isFallback = (node: ts.Expression): boolean =>
  (ts.isNumericLiteral(node) && Number(node.text) === 0) ||
  (ts.isStringLiteralLike(node) && node.text === '') ||
  /^(?:Number\.)?NaN$/.test(node.getText()) ||
  (ts.isPrefixUnaryExpression(node) && isFallback(node.operand));

/** Lines with such a fallback and no comment, on the line or the one above it, that gives the reason. */
function fallbacksIn(path: string, text: string): readonly string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true);
  const lines = text.split('\n');
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken && isFallback(node.right)) {
      const line = file.getLineAndCharacterOfPosition(node.right.getStart()).line;
      const hasReason = /\/\/\s*\S/.test(lines[line] ?? '') || /^\s*(?:\/\/|\*|\/\*\*)/.test(lines[line - 1] ?? '');
      if (!hasReason) found.push(`${path}:${line + 1}: ${(lines[line] ?? '').trim()}`);
    }
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

it('lets no missing key become a number or an empty text, unless a comment beside it gives the reason', () => {
  const files = ['calculators/math', 'calculators/season', 'calculators/catalog'].flatMap((folder) => filesBelow(folder, /\.ts$/));
  expect(files.length).toBeGreaterThan(300);
  expect(files.flatMap((path) => fallbacksIn(path, readFileSync(join(root, path), 'utf8')))).toEqual([]);
});

it.each(['const a = b ?? 0;', "const a = b.get(c) ?? '';", 'const a = b[0] ?? Number.NaN;', 'const a = b ?? -0;', 'const a = b ?? NaN;'])(
  'sees %s',
  (text) => {
    expect(fallbacksIn('a.ts', text)).toHaveLength(1);
  },
);
it.each(['const a = b ?? 1;', 'const a = b ?? c;', 'const a = b ?? 0; // nobody drank', '// Nobody drank.\nconst a = b ?? 0;'])(
  'lets pass %s',
  (text) => {
    expect(fallbacksIn('a.ts', text)).toEqual([]);
  },
);
