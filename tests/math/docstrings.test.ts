import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { halfLastDigit, printedNumber } from '../../calculators/math/checks.ts';
import { filesBelow, root } from '../support/files.ts';
import { isWantedPath } from '../support/mutated.ts';

const scaffolding = new Set(['calculators/math/need.ts', 'calculators/math/checks.ts']);
const paths = filesBelow('calculators/math', /(?<!\.cases)\.ts$/).filter((path) => !scaffolding.has(path) && isWantedPath(path));

interface Documented {
  readonly name: string;
  readonly text: string;
  readonly parameters: readonly string[];
}
/** Every exported function of a file with the comment above it. */
function functionsOf(path: string): Documented[] {
  const text = readFileSync(join(root, path), 'utf8');
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true);
  return file.statements.flatMap((statement) => {
    if (!ts.isFunctionDeclaration(statement) || !statement.modifiers?.some((each) => each.kind === ts.SyntaxKind.ExportKeyword)) return [];
    const comment = ts.getLeadingCommentRanges(text, statement.getFullStart())?.at(-1);
    return {
      name: statement.name?.text ?? '',
      text: comment ? text.slice(comment.pos, comment.end) : '',
      parameters: statement.parameters.flatMap((each) =>
        ts.isIdentifier(each.name)
          ? [each.name.text]
          : each.name.elements.flatMap((element) => (ts.isBindingElement(element) ? [element.name.getText()] : [])),
      ),
    };
  });
}

describe.each(paths)('%s', (path) => {
  const functions = functionsOf(path);
  const module = import(join(root, path)) as Promise<Record<string, unknown>>;

  it('is named for a function that it exports', () => {
    expect(functions.map(({ name }) => name)).toContain(path.split('/').at(-1)?.replace('.ts', ''));
  });

  it('says what, units, errors, source', () => {
    for (const { name, text, parameters } of functions) {
      expect(text, `${name} has a docstring`).toContain('/**');
      for (const parameter of parameters) expect(text, `${name}: @param ${parameter}`).toMatch(new RegExp(`@param (\\w+\\.)?${parameter}\\b`));
      expect(text, `${name}: @returns`).toContain('@returns');
      const source = /@source ([\w-]+)( [\w-]+)?(, .+)?/.exec(text);
      expect(source, `${name}: @source key, place (or: common practice; from memory; our own)`).not.toBeNull();
      const key = source?.[1] ?? '';
      const spoken = `${key}${source?.[2] ?? ''}`;
      const known = ['common practice', 'from memory', 'our own'].includes(spoken) || existsSync(join(root, `content/sources/${key}.json`));
      expect(known, `${name}: source "${spoken}" is in content/sources`).toBe(true);
    }
  });

  it('has an example that holds', async () => {
    const exported = await module;
    for (const { name, text } of functions) {
      const examples = [...text.matchAll(/@example\s+(.+?)\s*\/\/=>\s*(.+?)\s*(?:\n|\*\/)/g)];
      expect(examples.length, `${name}: @example`).toBeGreaterThan(0);
      for (const [, code = '', printed = ''] of examples) {
        const names = Object.keys(exported);
        const ours: unknown = new Function(...names, `return ${code}`)(...names.map((each) => exported[each]));
        if (typeof ours === 'number' && /^[-−\d]/.test(printed)) {
          expect(Math.abs(ours - printedNumber(printed)), `${code} gives ${ours}, not ${printed}`).toBeLessThanOrEqual(
            halfLastDigit(printed) * (1 + 1e-9),
          );
        } else {
          expect(ours, code).toEqual(new Function(`return ${printed}`)());
        }
      }
    }
  });
});
