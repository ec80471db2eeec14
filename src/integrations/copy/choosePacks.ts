import { createHash } from 'node:crypto';
import type { Stage } from '../../copy/copyIndex.ts';
import { officeFileName } from '../../office/model/officeFile.ts';

/** Files that belong together, and over how many packs they go. */
interface Group {
  readonly name: string;
  readonly stage: Stage;
  readonly packs: number;
  readonly has: RegExp;
}

/** The first that has a file takes it. A pack is to weigh about 100 kB: a cut line then loses little, and there are few to ask for. */
const groups: readonly Group[] = [
  // Faces of letters that no formula here is set in come with the workings.
  {
    name: 'looks',
    stage: 'base',
    packs: 1,
    has: /^_astro\/(?!KaTeX_(?:Caligraphic|Fraktur|SansSerif|Script|Typewriter|\w+-BoldItalic)\b)[^/]+\.(?!js$)\w+$/,
  },
  { name: 'scripts', stage: 'base', packs: 6, has: /^_astro\/(?!working-)[^/]+\.js$|^\w+\.js$/ },
  { name: 'first', stage: 'core', packs: 1, has: /^(?:index|404|(?:about|no-signal|paths|place|search|guides|calculators)\/index)\.html$/ },
  { name: 'search', stage: 'core', packs: 1, has: /^search\/index\.json$/ },
  { name: 'calculators', stage: 'core', packs: 3, has: /^calculators\/[^/]+\/index\.html$/ },
  { name: 'guides', stage: 'core', packs: 4, has: /^guides\// },
  { name: 'workings', stage: 'rest', packs: 4, has: /^(?:calculators|_astro)\// },
  { name: 'lists', stage: 'rest', packs: 3, has: /^(?:checks\/|(?:glossary|sources|tables)\/index\.html$)/ },
  // Much alike, and so smaller together.
  { name: 'entries', stage: 'rest', packs: 1, has: /^sources\/[^/]+\/index\.html$/ },
  { name: 'sources', stage: 'rest', packs: 3, has: /^(?:sources|search)\// },
  { name: 'other', stage: 'rest', packs: 2, has: /./ },
];

/** The worker itself and the packs; what changes by itself; README's pictures, which no page shows; what is fetched at a desk, to print or for a stick: a book weighs more than all the rest. */
const isLeftOut = (file: string): boolean => file === 'worker.js' || file === officeFileName || /^(?:copy|pictures)\/|\.(?:pdf|zip|epub)$/.test(file);

/** A script's name without the hash in it, so that a change moves it to no other pack. */
const lasting = (file: string): string => file.replace(/[.-][\w-]{8}(?=\.\w+$)/, '');
const numberIn = (file: string, packs: number): number => (createHash('sha256').update(lasting(file)).digest()[0] ?? 0) % packs;

export interface ChosenPack {
  readonly name: string;
  readonly stage: Stage;
  readonly files: readonly string[];
}

/** Which file of a built site goes into which pack, in the order in which they are to come. A file stays in its pack whatever others there are, so a small change leaves most packs as they were. */
export function choosePacks(files: readonly string[]): readonly ChosenPack[] {
  const kept = files.filter((file) => !isLeftOut(file));
  const groupOf = (file: string): Group | undefined => groups.find(({ has }) => has.test(file));
  return groups
    .flatMap((group) => {
      const own = kept.filter((file) => groupOf(file) === group);
      return Array.from({ length: group.packs }, (_, number) => ({
        name: `${group.name}-${number + 1}`,
        stage: group.stage,
        files: own.filter((file) => numberIn(file, group.packs) === number),
      }));
    })
    .filter((pack) => pack.files.length > 0);
}
