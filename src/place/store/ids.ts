const hexOf = (bytes: Uint8Array): string => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
export const randomMark = (): string => hexOf(crypto.getRandomValues(new Uint8Array(3)));
/** A random id, version 4 of RFC 9562. `crypto.randomUUID` makes the same, but stands only on secure addresses, and an office may serve its copy over plain http. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16)).map((byte, at) => {
    if (at === 6) return (byte & 0x0f) | 0x40;
    return at === 8 ? (byte & 0x3f) | 0x80 : byte;
  });
  return hexOf(bytes).replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-');
}
