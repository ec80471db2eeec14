import { type Block, blocksOf, spoken } from './guideBlocks.ts';

/** Numbers that state no fact of the trade. */
const harmless: readonly RegExp[] = [
  // A step that counts itself.
  /^\d+\. /g,
  // The step-point count goes by the name of a hundred steps.
  /\b(?:hundred|100)[ -](?:steps?|points?)\b/gi,
  /\b(?:one|a|an|1) or (?:two|2)\b/gi,
  /\b(?:step|table|figure|part|question|line|sheet)s? \d+(?:(?:,? (?:and|to) |, )\d+)*\b/gi,
  // A year, where nothing says that it is a quantity.
  /\b(?:in|of|since|from|by|after|until|before|the) (?:18|19|20)\d\d\b(?! (?:pounds?|feet|acres?|gallons?|head|lb|ft))/gi,
  /\b911\b/g,
];
const words =
  'two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|dozen';
const parts = 'half|third|fourth|fifth|quarter|thirds|fourths|fifths|quarters';
const units =
  'inch|inches|foot|feet|yards?|miles?|paces|seconds|minutes?|hours?|days?|weeks?|months?|years?|percent|degrees?|pounds?|ounces?|tons?|gallons?|acres?|dollars?|cents?|grains|quarts?|pints?';
const spelled = new RegExp(`\\b(?:${words})(?:[ -](?:and a half|more|full|dry|whole|good|or more|${units}))?[ -](?:${units})\\b`, 'i');
const partOfUnit = new RegExp(`\\b(?:${parts})(?: of)? (?:an?|the|one) (?:${units})\\b`, 'i');

/** The first number in a text that states something, or undefined. */
export function numberIn(text: string): string | undefined {
  const left = harmless.reduce((rest, pattern) => rest.replaceAll(pattern, ''), spoken(text.replaceAll(/\{\{(?:Computed|Tabled)\}\}/g, '')));
  return /\d[\d,./]*/.exec(left)?.[0] ?? spelled.exec(left)?.[0] ?? partOfUnit.exec(left)?.[0];
}

const says = /\{\{(?:Cite|Computed|Example|Local|Calculator|Table|Tabled)\}\}|common practice|from memory|\]\(\/calculators\//;
/** A list or table takes over what its caption line cites: the paragraph right above it. */
const takesOver = ({ kind, above }: Block): boolean => (kind === 'row' || (kind === 'item' && /:$/.test(spoken(above)))) && says.test(above);

/** Blocks of a guide that state a number and say nowhere what it comes from. */
export const unsourcedIn = (body: string): readonly string[] =>
  blocksOf(body).flatMap((block) => {
    if (block.kind === 'heading' || block.hasSourceCell || says.test(block.text) || takesOver(block)) return [];
    const number = numberIn(block.text);
    return number === undefined ? [] : [`"${number}" in: ${spoken(block.text)}`];
  });
