/** Drawn markup as data: a text, or an element's name, its attributes and what stands in it. */
export type Markup = string | readonly [name: string, attributes: Readonly<Record<string, string>>, ...children: Markup[]];

/** Elements of drawn markup, built one by one: no text is ever read as HTML, which the policy of the pages forbids. */
export function elementsOf(parts: readonly Markup[]): DocumentFragment {
  const spaces: Readonly<Record<string, string>> = { svg: 'http://www.w3.org/2000/svg', math: 'http://www.w3.org/1998/Math/MathML' };
  const build =
    (within: string) =>
    (part: Markup): Node => {
      if (typeof part === 'string') return document.createTextNode(part);
      const [name, attributes, ...children] = part;
      const space = spaces[name] ?? within;
      const element = document.createElementNS(space, name);
      for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
      element.append(...children.map(build(space)));
      return element;
    };
  const whole = document.createDocumentFragment();
  whole.append(...parts.map(build('http://www.w3.org/1999/xhtml')));
  return whole;
}
