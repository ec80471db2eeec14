/** `holdwater-two-bench-place-2026-06-20.json` */
export function nameOfFile(placeName: string, isoDay: string, ending = 'json'): string {
  const plain = placeName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `holdwater-${plain === '' ? 'place' : plain}-${isoDay}.${ending}`;
}
