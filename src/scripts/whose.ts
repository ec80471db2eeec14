import type { Change } from '../../calculators/ui/formProps.ts';
import type { SideNames } from '../../calculators/ui/formState.ts';
import { keep, kept } from './kept.ts';

// Beside the figures, which the address carries: who put them there and what the sides are called. It never goes into a link.

interface Whose {
  readonly linked: ReadonlySet<string>;
  readonly touched: ReadonlySet<string>;
  readonly placed: ReadonlySet<string>;
  readonly filled?: string | undefined;
  readonly names: SideNames;
}
/** `path` and `name` are of the form: its page, and what it is called there. */
export const whoseKey = (path: string, name: string): string => `holdwater-whose:${path}#${name}`;
const keyOf = (box: HTMLElement): string => whoseKey(location.pathname, box.dataset['name'] ?? '');
export const whoseText = ({ link, linked, touched, placed, filled, names }: Change): string =>
  JSON.stringify({ link, linked: [...linked], touched: [...touched], placed: [...placed], names: [...names, filled ?? ''] });

export const keepWhose = (box: HTMLElement, change: Change): void => void keep('localStorage', keyOf(box), whoseText(change));

const isList = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((each) => typeof each === 'string');
/** What was kept for this very link; nothing for any other, and nothing where it cannot be read. */
export function keptWhose(box: HTMLElement, link: string): Whose | undefined {
  try {
    const found: unknown = JSON.parse(kept('localStorage', keyOf(box)) ?? 'null');
    if (typeof found !== 'object' || found === null || !('link' in found) || found.link !== link) return undefined;
    const list = (name: string): readonly string[] => {
      const value: unknown = Object.entries(found).find(([key]) => key === name)?.[1];
      return isList(value) ? value : [];
    };
    const [mine = '', theirs = '', filled] = list('names');
    return { filled, linked: new Set(list('linked')), touched: new Set(list('touched')), placed: new Set(list('placed')), names: [mine, theirs] };
  } catch {
    return undefined;
  }
}
