import { type HTMLElement, parse } from 'node-html-parser';

const colours = new Set(['none', 'inherit', 'currentColor']);
const tokens = ['ink', 'muted', 'sod', 'rain', 'clay', 'straw', 'soil-a', 'soil-b', 'soil-c', 'line', 'paper', 'tint'];
for (const token of tokens) colours.add(`var(--${token})`);

/** On a phone a drawing is about as wide as this, and text below this height cannot be read there. */
const phoneUnits = 390;
const leastTextUnits = 15;

const elements = new Set(['script', 'style', 'foreignobject', 'image', 'use', 'a', 'set']);
const attributes = /^(id|class|href|xlink:href|on\w+)$/i;
const addresses = /url\(|@import|javascript:/i;
const colouring = new Set(['fill', 'stroke', 'color', 'stop-color']);

/** The drawing's one `svg` element, without comments. */
const elementOf = (file: string): HTMLElement | null => parse(file).querySelector('svg');

/** What an element is drawn by, whether it stands in an attribute of its own or in a style. */
const propertiesOf = (element: HTMLElement): readonly (readonly [string, string])[] =>
  Object.entries(element.attributes).flatMap(([name, value]) =>
    name === 'style'
      ? value.split(';').map((property) => {
          const [of = '', ...is] = property.split(':');
          return [of.trim(), is.join(':').trim()] as const;
        })
      : [[name, value] as const],
  );

function problemsOf(element: HTMLElement, width: number): readonly string[] {
  const name = element.tagName.toLowerCase();
  const problems: string[] = [];
  if (elements.has(name) || name.startsWith('animate')) problems.push(`element not allowed: ${name}`);
  for (const [attribute, value] of Object.entries(element.attributes)) {
    if (attributes.test(attribute)) problems.push(`attribute not allowed: ${attribute}`);
    if (addresses.test(value)) problems.push(`address not allowed: ${value}`);
  }
  for (const [property, value] of propertiesOf(element)) {
    if (colouring.has(property) && !colours.has(value)) problems.push(`colour not of the page: ${value}`);
    const units = Number.parseFloat(value);
    if (property === 'font-size' && (!/^[\d.]+(px)?$/.test(value) || (units / width) * phoneUnits < leastTextUnits)) {
      problems.push(`text too small for a phone: ${value}`);
    }
  }
  return problems;
}

/** What keeps a drawing from being set into a page: it must be still, take its colours from the page, and be read on a phone. */
export function drawingProblems(file: string): readonly string[] {
  const svg = elementOf(file);
  const [, , width = Number.NaN, height = Number.NaN] = (svg?.getAttribute('viewBox') ?? '').split(/[\s,]+/).map(Number);
  if (!svg || !(width > 0 && height > 0)) return ['needs one svg element with a viewBox'];
  const own = ['width', 'height', 'style'].some((name) => svg.hasAttribute(name)) ? ['the svg element has a size or a style of its own'] : [];
  return [...own, ...[svg, ...svg.querySelectorAll('*')].flatMap((element) => problemsOf(element, width))];
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
  return String(elementOf(file)).replace(/^<svg\b/, `<svg class="drawing" role="img" aria-label="${label}"`);
}
