/**
 * A formula template, read once. Grammar (TeX spelling, nothing else is accepted):
 *   sum     = ["-"] product { ("+" | "-") product }
 *   product = power { ["\times" | "/"] power }          side by side multiplies
 *   power   = atom [ "^" (atom | "{" sum "}") ]
 *   atom    = number | "\q{" name "}" | "\frac{" sum "}{" sum "}" | "\sqrt{" sum "}" | "(" sum ")" | "\pi"
 *           | ("\ln" | "\exp" | "\min" | "\max") "(" sum { "," sum } ")"
 */
export type Formula =
  | { readonly is: 'number'; readonly text: string }
  | { readonly is: 'quantity'; readonly name: string }
  | { readonly is: 'group' | 'sqrt' | 'minus'; readonly of: Formula }
  | { readonly is: '+' | '-' | '*' | '/' | 'beside' | 'frac' | '^'; readonly left: Formula; readonly right: Formula }
  | { readonly is: 'call'; readonly name: 'ln' | 'exp' | 'min' | 'max'; readonly of: readonly Formula[] };

type Token = { readonly is: 'number' | 'name' | 'sign'; readonly text: string };
const token = /\s*(?:(\d+(?:\.\d+)?)|\\q\{([A-Za-z0-9]+)\}|(\\[a-z]+|[-+/^(){},]))/y;

function tokensOf(template: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; template.slice(at).trim() !== ''; at = token.lastIndex) {
    token.lastIndex = at;
    const found = token.exec(template);
    if (!found) throw new SyntaxError(`formula: cannot read "${template.slice(at)}" in "${template}"`);
    const [, number, name, sign] = found;
    tokens.push(
      number !== undefined ? { is: 'number', text: number } : name !== undefined ? { is: 'name', text: name } : { is: 'sign', text: sign ?? '' },
    );
  }
  return tokens;
}

const calls = new Map<string, 'ln' | 'exp' | 'min' | 'max'>([
  ['\\ln', 'ln'],
  ['\\exp', 'exp'],
  ['\\min', 'min'],
  ['\\max', 'max'],
]);

class Reader {
  readonly #template: string;
  readonly #tokens: readonly Token[];
  #next = 0;
  constructor(template: string) {
    this.#template = template;
    this.#tokens = tokensOf(template);
  }
  whole(): Formula {
    const all = this.#sum();
    if (this.#next < this.#tokens.length) this.#fail('something left over');
    return all;
  }
  #fail(what: string): never {
    throw new SyntaxError(`formula: ${what} in "${this.#template}"`);
  }
  #peek(): string | undefined {
    const here = this.#tokens[this.#next];
    return here?.is === 'sign' ? here.text : undefined;
  }
  #take(sign: string): void {
    if (this.#peek() !== sign) this.#fail(`expected ${sign}`);
    this.#next++;
  }
  #braced(): Formula {
    this.#take('{');
    const inside = this.#sum();
    this.#take('}');
    return inside;
  }
  #sum(): Formula {
    const isMinus = this.#peek() === '-';
    if (isMinus) this.#next++;
    const first = this.#product();
    let left: Formula = isMinus ? { is: 'minus', of: first } : first;
    for (let sign = this.#peek(); sign === '+' || sign === '-'; sign = this.#peek()) {
      this.#next++;
      left = { is: sign, left, right: this.#product() };
    }
    return left;
  }
  #product(): Formula {
    let left = this.#power();
    for (;;) {
      const sign = this.#peek();
      if (sign === '\\times' || sign === '/') {
        this.#next++;
        left = { is: sign === '/' ? '/' : '*', left, right: this.#power() };
      } else if (this.#next < this.#tokens.length && (sign === undefined || sign === '(' || sign.startsWith('\\'))) {
        left = { is: 'beside', left, right: this.#power() };
      } else return left;
    }
  }
  #power(): Formula {
    const left = this.#atom();
    if (this.#peek() !== '^') return left;
    this.#next++;
    return { is: '^', left, right: this.#peek() === '{' ? this.#braced() : this.#atom() };
  }
  #atom(): Formula {
    const here = this.#tokens[this.#next++];
    if (here === undefined) return this.#fail('the end comes too early');
    if (here.is === 'number') return { is: 'number', text: here.text };
    if (here.is === 'name') return { is: 'quantity', name: here.text };
    const call = calls.get(here.text);
    if (call) {
      this.#take('(');
      const of = [this.#sum()];
      while (this.#peek() === ',') {
        this.#next++;
        of.push(this.#sum());
      }
      this.#take(')');
      return { is: 'call', name: call, of };
    }
    switch (here.text) {
      case '\\frac': {
        const left = this.#braced();
        return { is: 'frac', left, right: this.#braced() };
      }
      case '\\sqrt':
        return { is: 'sqrt', of: this.#braced() };
      case '\\pi':
        return { is: 'number', text: '\\pi' };
      case '(': {
        const of = this.#sum();
        this.#take(')');
        return { is: 'group', of };
      }
      default:
        return this.#fail(`unexpected ${here.text}`);
    }
  }
}

export const readFormula = (template: string): Formula => new Reader(template).whole();

/** Every quantity that a formula names. */
export function namesIn(formula: Formula): readonly string[] {
  switch (formula.is) {
    case 'number':
      return [];
    case 'quantity':
      return [formula.name];
    case 'group':
    case 'sqrt':
    case 'minus':
      return namesIn(formula.of);
    case 'call':
      return formula.of.flatMap(namesIn);
    default:
      return [...namesIn(formula.left), ...namesIn(formula.right)];
  }
}

/** The number that the drawn formula stands for: tests hold it against `compute`. */
export function evaluate(formula: Formula, value: (name: string) => number): number {
  const go = (part: Formula): number => evaluate(part, value);
  switch (formula.is) {
    case 'number':
      return formula.text === '\\pi' ? Math.PI : Number(formula.text);
    case 'quantity':
      return value(formula.name);
    case 'group':
      return go(formula.of);
    case 'minus':
      return -go(formula.of);
    case 'sqrt':
      return Math.sqrt(go(formula.of));
    case '+':
      return go(formula.left) + go(formula.right);
    case '-':
      return go(formula.left) - go(formula.right);
    case '*':
    case 'beside':
      return go(formula.left) * go(formula.right);
    case '/':
    case 'frac':
      return go(formula.left) / go(formula.right);
    case '^':
      return go(formula.left) ** go(formula.right);
    case 'call': {
      const of = formula.of.map(go);
      return formula.name === 'ln'
        ? Math.log(of[0] ?? Number.NaN)
        : formula.name === 'exp'
          ? Math.exp(of[0] ?? Number.NaN)
          : Math[formula.name](...of);
    }
  }
}

/**
 * TeX again: with symbols, or with numbers.
 * @param isNumbers - Then factors side by side get a times sign: 2 3 would read as twenty-three
 */
export function toTex(formula: Formula, draw: (name: string) => string, isNumbers: boolean): string {
  const go = (part: Formula): string => toTex(part, draw, isNumbers);
  switch (formula.is) {
    case 'number':
      return formula.text;
    case 'quantity':
      return draw(formula.name);
    case 'group':
      return `\\left(${go(formula.of)}\\right)`;
    case 'minus':
      return `-${go(formula.of)}`;
    case 'sqrt':
      return `\\sqrt{${go(formula.of)}}`;
    case 'frac':
      return `\\dfrac{${go(formula.left)}}{${go(formula.right)}}`;
    case '^':
      return `{${go(formula.left)}}^{${go(formula.right)}}`;
    case '*':
      return `${go(formula.left)} \\times ${go(formula.right)}`;
    case 'beside':
      return `${go(formula.left)} ${isNumbers ? '\\times' : '\\,'} ${go(formula.right)}`;
    case 'call':
      return `\\${formula.name}\\left(${formula.of.map(go).join(', ')}\\right)`;
    default:
      return `${go(formula.left)} ${formula.is} ${go(formula.right)}`;
  }
}
