interface Node {
  readonly type: string;
  readonly tagName?: string;
  readonly properties?: Readonly<Record<string, unknown>>;
  children?: Node[];
}

/** Rehype plugin: a table that is wider than a phone scrolls in a box of its own instead of pushing the page sideways. */
export function wideTables() {
  const wrap = (node: Node): void => {
    if (!node.children) return;
    node.children.forEach(wrap);
    node.children = node.children.map((child) =>
      child.tagName === 'table' ? { type: 'element', tagName: 'div', properties: { className: ['wide'] }, children: [child] } : child,
    );
  };
  return (tree: Node): void => wrap(tree);
}
