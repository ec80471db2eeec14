import { encode } from 'uqr';

/** Three dots of a printer that puts down 300 an inch: what a telephone can still tell apart. */
const moduleMm = 0.254;
const leastMm = 24;

/** The link as a code to scan. */
export function Code({ link }: { readonly link: string }) {
  const { data, size } = encode(link, { ecc: 'L', border: 2 });
  const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  const side = `${Math.max(leastMm, size * moduleMm)}mm`;
  return (
    <svg
      class="code"
      style={{ width: side, height: side }}
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label="Code to scan: opens this calculation"
      shape-rendering="crispEdges"
    >
      <path d={path} />
    </svg>
  );
}
