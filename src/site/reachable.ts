/**
 * Whether others can open an address. Not one on this device or in its own network: local names (RFC 6761, RFC 6762, and `home.arpa` of RFC 8375), private and
 * link-local addresses (RFC 1918, RFC 3927, RFC 4193, RFC 4291), and bare names of one word, which a network gives out itself.
 */
export function isReachable({ protocol, hostname }: Pick<URL, 'protocol' | 'hostname'>): boolean {
  if (!/^https?:$/.test(protocol)) return false;
  const host = hostname.toLowerCase().replace(/\.$/, '');
  if (host.startsWith('[')) return !/^\[(?:::1?\]|f[cd]|fe[89ab])/.test(host);
  if (!host.includes('.') || /\.(?:localhost|local|internal|home\.arpa)$/.test(host)) return false;
  return !/^(?:0|10|127|169\.254|192\.168|172\.(?:1[6-9]|2\d|3[01]))(?:\.\d+)+$/.test(host);
}
