/** What several calculators warn of in the same words; each says when. */
export const toxicStubble = {
  lead: 'Leave 4 inches of old tall fescue: the lowest hold the most toxin.',
  say: 'The lowest inches of old tall fescue hold the most of its toxin: the bottom two by one Missouri study, two to four by a later page. Leave 4 inches, and 3 at the least where you know that the stand is free of it.',
  source: 'lory-fall-nitrogen-2022',
};
export const hardOne = {
  lead: 'If this is a hard one, talk it over with somebody you trust.',
  say: 'If this is a hard one, don’t carry it alone. Talk it over with somebody you trust, or call one of the numbers under the answer.',
  source: 'common practice',
};
