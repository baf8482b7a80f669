/**
 * A room by its name within a sentence: "the bedroom"; where its name only says what kind of room it is,
 * "the living room".
 */
export const theRoom = (name: string): string =>
  KINDS.has(name.toLowerCase()) ? `the ${name} room` : `the ${name}`;

const KINDS: ReadonlySet<string> = new Set([
  ...['living', 'dining', 'sitting', 'family', 'drawing', 'utility', 'guest', 'spare', 'box'],
]);
