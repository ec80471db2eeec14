/** What the worker stands in. Tests give it another one. */
export interface Here {
  readonly caches: CacheStorage;
  readonly fetch: (request: Request) => Promise<Response>;
  /** The address of the folder that the worker answers for. */
  readonly folder: string;
  /** Is the page of this id still open? */
  readonly isOpen: (clientId: string) => Promise<boolean>;
  /** Says something to every open page. */
  readonly tell: (message: unknown) => Promise<void>;
  readonly pause: (ms: number) => Promise<void>;
}

/** The path under which a file of the site is kept and asked for. */
export const pathIn = (here: Here, file: string): string => new URL(file, here.folder).pathname;

/** Names of caches end in the folder, since two copies of the site may stand on one server. */
export const folderPath = (here: Here): string => new URL(here.folder).pathname;
