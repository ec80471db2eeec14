/** What is told of a folder: of which day and version it is. */
export interface Edition {
  /** `Nov 29, 2026` */
  readonly day: string;
  readonly version: string;
}

/** What a page says of being hosted, by its `data-hosted`, and what is true of a folder in its place. */
const told: Readonly<Record<string, (edition: Edition) => string>> = {
  foot: ({ day, version }) => `This is a copy in a folder, of ${day}, version ${version}. Opened from a disk, it needs no signal.`,
  promise: () => 'All of it works from this folder with no signal.',
  handbook: () => 'The book for paper stands where these pages are hosted, if its host has made one.',
  waiting: () => 'If this stays, a file may be missing from this folder: extract the zip again, all of it.',
  offline: ({ day }) =>
    `This is a copy in a folder, of ${day}. Opened from a disk, everything in it works without a signal, search included, as long as the folder stays whole. It looks for no newer copy: that comes only as a new folder.`,
  'get-folder': () => 'You have it: these pages are open from such a folder. Copy the folder, or the zip that it came in, and hand it on.',
};

/**
 * The words in place of those that only a hosted copy may say.
 * @throws Error for a mark that has none: what is untrue in a folder must not stand there
 */
export function toldInFolder(mark: string, edition: Edition): string {
  const say = told[mark];
  if (!say) throw new Error(`data-hosted="${mark}" has no words for the folder: put them into src/integrations/portable/texts.ts`);
  return say(edition);
}
