import type { Calculator } from '../../calculators/kit/define.ts';

/** Words that tell somebody to give up stock or grass. */
const telling =
  /\b(?:sell|selling|destock\w*|wean\w* (?:\w+ )?early|early weaning|take (?:stock|them|cattle|some) off|pull (?:stock|them|cattle|\w+ off)|cull (?:the|your|now|some|cows|hard)|stop (?:grazing|feeding them)|go home)\b/i;
/** Definitions that only speak of it, with the reason. */
const speaksOnly: Readonly<Record<string, string>> = {
  'feed-hazards': 'says that millet hay should not be sold as horse hay',
  season: 'asks what a sale would do to the hay of these years, and tells nobody to sell',
  'herd-intake': 'says that head bought or sold must be put in by hand, and tells nobody to sell',
};

/** What a definition says by itself: its question, its cautions and limits, and what it names. */
const wordsOf = ({ title, question, lead, cautions, limits, quantities, inputs }: Calculator): readonly string[] => [
  title,
  question,
  lead,
  ...cautions.map(({ say }) => say),
  ...limits,
  ...Object.values(quantities).flatMap((quantity) => [quantity.label, ...(quantity.kind === 'word' ? Object.values(quantity.words) : [])]),
  ...Object.values(inputs).flatMap((input) => [
    input.label,
    ...(input.kind === 'rows' ? Object.values(input.columns) : [input]).flatMap((cell) =>
      cell.kind === 'choice' ? Object.values(cell.options).map(({ label }) => label) : [],
    ),
  ]),
];

/** Why the lines to call are missing from a definition, or not called for; nothing where it is right. */
export function faultOfWeighing(calculator: Calculator): string | undefined {
  const tells = wordsOf(calculator).find((words) => telling.test(words));
  const isExcused = Object.hasOwn(speaksOnly, calculator.slug);
  if (tells === undefined && isExcused) return `${calculator.slug} no longer speaks of selling: take it off the list`;
  if (calculator.weighsOnPeople || isExcused || tells === undefined) return undefined;
  return `${calculator.slug} needs \`weighsOnPeople: true\`, for it says: “${tells}”`;
}
