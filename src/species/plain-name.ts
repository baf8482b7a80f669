/** A name by its letters and digits alone: names that are alike so cannot be told apart in figures and columns. */
export const plainName = (name: string): string =>
  name.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '');
