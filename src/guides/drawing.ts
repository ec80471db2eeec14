const colours = new Set(['none', 'inherit', 'currentColor']);
const tokens = ['ink', 'muted', 'sod', 'rain', 'clay', 'straw', 'soil-a', 'soil-b', 'soil-c', 'line', 'paper', 'tint'];
for (const token of tokens) colours.add(`var(--${token})`);

/** On a phone a drawing is about as wide as this, and text below this height cannot be read there. */
const phoneUnits = 390;
const leastTextUnits = 15;

const forbidden: readonly (readonly [RegExp, string])[] = [
  [/<(script|style|foreignObject|image|use|a|animate\w*|set)\b/i, 'element'],
  [/\s(id|class|href|xlink:href|on\w+)\s*=/i, 'attribute'],
  [/url\(|@import|javascript:/i, 'address'],
];

const attribute = (tag: string, name: string): string | undefined => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];

const valuesOf = (svg: string, names: string): readonly string[] => [
  ...[...svg.matchAll(new RegExp(`\\s(?:${names})="([^"]*)"`, 'g'))].map((found) => found[1] ?? ''),
  ...[...svg.matchAll(/\sstyle="([^"]*)"/g)].flatMap((style) =>
    [...(style[1] ?? '').matchAll(new RegExp(`(?:^|;)\\s*(?:${names})\\s*:\\s*([^;]+)`, 'g'))].map((found) => (found[1] ?? '').trim()),
  ),
];

/** The drawing without what stands before and after its one `svg` element, and without comments. */
const elementOf = (file: string): string => /<svg\b[\s\S]*<\/svg>/.exec(file.replace(/<!--[\s\S]*?-->/g, ''))?.[0] ?? '';

/** What keeps a drawing from being set into a page: it must be still, take its colours from the page, and be read on a phone. */
export function drawingProblems(file: string): readonly string[] {
  const svg = elementOf(file);
  const root = /^<svg\b[^>]*>/.exec(svg)?.[0] ?? '';
  const viewBox =
    attribute(root, 'viewBox')
      ?.split(/[\s,]+/)
      .map(Number) ?? [];
  const [, , width = Number.NaN, height = Number.NaN] = viewBox;
  const problems: string[] = [];
  if (!(width > 0 && height > 0)) problems.push('needs one svg element with a viewBox');
  if (/\s(width|height|style)="/.test(root)) problems.push('the svg element has a size or a style of its own');
  for (const [pattern, kind] of forbidden) {
    const found = pattern.exec(svg)?.[0].trim();
    if (found !== undefined) problems.push(`${kind} not allowed: ${found}`);
  }
  for (const colour of valuesOf(svg, 'fill|stroke|color|stop-color')) if (!colours.has(colour)) problems.push(`colour not of the page: ${colour}`);
  for (const size of valuesOf(svg, 'font-size')) {
    const units = Number.parseFloat(size);
    if (!/^[\d.]+(px)?$/.test(size) || (units / width) * phoneUnits < leastTextUnits) problems.push(`text too small for a phone: ${size}`);
  }
  return problems;
}

/**
 * A drawing as it stands in a page, with its text for those who cannot see it.
 * @throws Error if it may not stand there
 */
export function drawingIn(name: string, file: string | undefined, says: string): string {
  if (file === undefined) throw new Error(`no drawing content/drawings/${name}.svg`);
  const problems = drawingProblems(file);
  if (problems.length > 0) throw new Error(`content/drawings/${name}.svg: ${problems.join('; ')}`);
  const label = says.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
  return elementOf(file).replace(/^<svg\b/, `<svg class="drawing" role="img" aria-label="${label}"`);
}
