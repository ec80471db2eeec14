/** What cannot be opened here goes out as it is, for who can. */
export const textOfRaw = (raw: unknown): string => `${JSON.stringify(raw, null, 1)}\n`;
