import { underBase } from '../site/href.ts';

interface Node {
  readonly type: string;
  readonly tagName?: string;
  readonly properties?: Record<string, unknown>;
  readonly children?: readonly Node[];
}

/** Rehype plugin: guides write links from the site's root (`/guides/x/`); a copy under a folder needs that folder in front. */
export function baseLinks({ base }: { readonly base: string }) {
  const rewrite = (node: Node): void => {
    for (const name of ['href', 'src']) {
      const value = node.properties?.[name];
      if (node.properties && typeof value === 'string' && /^\/(?!\/)/.test(value)) node.properties[name] = underBase(base, value);
    }
    node.children?.forEach(rewrite);
  };
  return (tree: Node): void => rewrite(tree);
}
