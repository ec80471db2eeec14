declare module '@citation-js/core' {
  interface Name {
    readonly family?: string;
    readonly given?: string;
    readonly literal?: string;
  }
  /** An item as the Citation Style Language describes it. */
  interface Item {
    readonly id: string;
    readonly type: string;
    readonly title: string;
    readonly author?: readonly Name[];
    readonly editor?: readonly Name[];
    readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] };
    readonly 'container-title'?: string;
    readonly publisher?: string;
    readonly volume?: string;
    readonly issue?: string;
    readonly page?: string;
    readonly URL?: string;
    readonly DOI?: string;
    readonly note?: string;
  }
  export class Cite {
    constructor(data: readonly Item[] | string);
    readonly data: readonly Item[];
    format(format: 'bibtex' | 'ris'): string;
  }
  export const plugins: { readonly config: { get(plugin: string): { readonly format: Record<string, unknown> } } };
}
declare module '@citation-js/plugin-bibtex';
declare module '@citation-js/plugin-ris';
