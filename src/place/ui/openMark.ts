/** Which place is open, as every page of the site can read it. */
export interface OpenMark {
  readonly read: () => string | undefined;
  readonly write: (id: string | undefined) => void;
}
