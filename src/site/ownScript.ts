interface Policy {
  readonly createScriptURL: (address: string) => unknown;
}
declare global {
  /** Only in browsers that ask for it. */
  var trustedTypes: { readonly createPolicy: (name: string, rules: { readonly createScriptURL: (address: string) => string }) => Policy } | undefined;
}

/** @throws TypeError for an address of another origin */
function own(address: string): string {
  const { origin, href } = new URL(address, location.href);
  if (origin !== location.origin) throw new TypeError(`no script of this site: ${address}`);
  return href;
}
// The only name that `trusted-types` of astro.config.ts lets through; it makes addresses alone, no markup and no code.
const policy = globalThis.trustedTypes?.createPolicy('own-script', { createScriptURL: own });

/**
 * The address of one of the site's own scripts, as a worker's constructor takes it under `require-trusted-types-for`.
 * @throws TypeError for an address of another origin
 */
// A browser takes the policy's object where its types ask for a text.
export const ownScript = (address: string): string => (policy ? (policy.createScriptURL(address) as string) : own(address));
