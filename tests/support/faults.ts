import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { filesBelow, root } from './files.ts';

/** One wrong number, sign or pair of keys, to be put into a copy of the code. */
export interface Fault {
  readonly path: string;
  /** Faults of one group can't be told apart by the tests that fail, so only one of them is planted at a time. */
  readonly group: string;
  readonly line: number;
  readonly kind: 'number' | 'sign' | 'keys';
  readonly from: number;
  readonly to: number;
  readonly was: string;
  readonly is: string;
}
export type Layer = 'catalog' | 'tables' | 'math';

/** Where a number is no limit and no constant: how finely it is told, the example that a field starts with, the edition. */
const notLimits = new Set(['default', 'digits', 'significant', 'version', 'maxRows', 'changes', 'searchWords', 'order']);
/** Where the words are prose, so that a swap of two of them is no fault of a number. */
const prose = new Set([
  'label',
  'help',
  'field',
  'ask',
  'say',
  'says',
  'because',
  'name',
  'title',
  'question',
  'lead',
  'source',
  'where',
  'seen',
  'at',
  'kind',
  'symbol',
  'rowName',
  'belongsTo',
  'printed',
  'group',
  'of',
  'unit',
  'formula',
  'shows',
  'tool',
  'standIn',
]);
/** Calls whose numbers count places in a text or a list. */
const placing = new Set(['slice', 'at', 'toFixed', 'toPrecision', 'padStart', 'padEnd', 'split', 'need', 'repeat', 'with', 'flat', 'log10']);

const nameOf = (node: ts.Node): string | undefined =>
  ts.isPropertyAssignment(node) && (ts.isIdentifier(node.name) || ts.isStringLiteral(node.name)) ? node.name.text : undefined;
const calleeOf = (node: ts.CallExpression): string =>
  ts.isPropertyAccessExpression(node.expression) ? node.expression.name.text : ts.isIdentifier(node.expression) ? node.expression.text : '';
/** `number('Rain', 'P', 'in', [0.01, 40], 3)`: what a fresh form shows is an example, not a limit. */
const startsWith = new Set(['number', 'months']);
const isStart = (node: ts.Node): boolean =>
  !ts.isSourceFile(node) && ts.isCallExpression(node.parent) && startsWith.has(calleeOf(node.parent)) && node.parent.arguments[4] === node;
const isAside = (node: ts.Node): boolean =>
  isStart(node) ||
  notLimits.has(nameOf(node) ?? '') ||
  ts.isElementAccessExpression(node) ||
  ts.isTypeNode(node) ||
  ts.isImportDeclaration(node) ||
  (ts.isCallExpression(node) && placing.has(calleeOf(node)));

/** By a half, up at one place and down at the next, so that both sides of limits are tried. */
const moved = (value: number, at: number): number => Number((value * (at % 2 === 0 ? 1.5 : 0.5)).toPrecision(12));

const swappable = (node: ts.Expression): string | undefined => {
  if (ts.isNumericLiteral(node) || ts.isPrefixUnaryExpression(node)) return 'number';
  if (ts.isStringLiteral(node)) return node.text.includes(' ') ? undefined : 'word';
  if (ts.isIdentifier(node) || ts.isPropertyAccessExpression(node)) return 'value';
  if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && node.elements.every((each) => ts.isNumericLiteral(each))) return 'list';
  return undefined;
};

function faultsIn(path: string, group: string): readonly Fault[] {
  const text = readFileSync(join(root, path), 'utf8');
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true);
  const found: Fault[] = [];
  const add = (kind: Fault['kind'], from: number, to: number, is: string): void => {
    found.push({ path, group, line: file.getLineAndCharacterOfPosition(from).line + 1, kind, from, to, was: text.slice(from, to), is });
  };
  const look = (node: ts.Node): void => {
    if (isAside(node)) return;
    if (ts.isNumericLiteral(node)) {
      const value = Number(node.text);
      if (value !== 0) add('number', node.getStart(), node.end, String(moved(value, found.length)));
    } else if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
      add('sign', node.getStart(), node.operand.getStart(), '+');
    } else if (ts.isBinaryExpression(node) && [ts.SyntaxKind.PlusToken, ts.SyntaxKind.MinusToken].includes(node.operatorToken.kind)) {
      const isText = [node.left, node.right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side));
      if (!isText)
        add('sign', node.operatorToken.getStart(), node.operatorToken.end, node.operatorToken.kind === ts.SyntaxKind.PlusToken ? '-' : '+');
    } else if (ts.isObjectLiteralExpression(node)) {
      const values = node.properties.flatMap((each) =>
        ts.isPropertyAssignment(each) && !prose.has(nameOf(each) ?? '') && !isAside(each) ? [each.initializer] : [],
      );
      for (const [at, one] of values.entries()) {
        const other = values[at + 1];
        if (at % 2 === 1 || !other || swappable(one) === undefined || swappable(one) !== swappable(other) || one.getText() === other.getText())
          continue;
        add('keys', one.getStart(), other.end, `${other.getText()}${text.slice(one.end, other.getStart())}${one.getText()}`);
      }
    }
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

/** Every fault that can be planted in a layer. */
export const faultsOf = (layer: Layer): readonly Fault[] =>
  filesBelow(`calculators/${layer}`, /(?<!\.d)\.ts$/)
    // Cases and edges are the tests' side; labels and digits of results say how a number is told.
    .filter((path) => !/(?:^|[./])(?:cases|edges|checks|quantities)\.ts$/.test(path))
    .flatMap((path) => faultsIn(path, groupOf(layer, path)));
const groupOf = (layer: Layer, path: string): string => (layer === 'tables' ? path.replace(/^.*\/|\.ts$/g, '') : (path.split('/')[2] ?? path));
