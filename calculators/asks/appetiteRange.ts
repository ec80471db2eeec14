// Apart from the rows of stock: forms that have their own rows fetch no others for a sentence.

/** Why what stock eat is told with a range: of each kind, whether trials found how far its guides miss. */
export const whyAppetiteRange = (areTried: readonly boolean[]): string =>
  areTried.every((each) => each)
    ? 'since guides miss by 14 to 17 % either way'
    : areTried.some((each) => each)
      ? 'by how far guides miss for cows, and how far they differ for other kinds'
      : 'the least and the most that guides print';
