/**
 * A room by its name within a sentence: "the bedroom"; "the living room" where its name only says what kind
 * of room it is; "bedroom 2" and "Mia's room" without an article.
 */
export function theRoom(name: string): string {
  const [, words = name, number = ''] = NUMBERED.exec(name) ?? [];
  const full = KINDS.has(words.toLowerCase()) ? `${words} room${number}` : name;
  return number !== '' || SOMEBODYS.test(name) ? full : `the ${full}`;
}

const KINDS: ReadonlySet<string> = new Set([
  ...['living', 'dining', 'sitting', 'family', 'drawing', 'utility', 'guest', 'spare', 'box'],
]);
const NUMBERED = /^(.*\S)(\s+\d+)$/;
const SOMEBODYS = /^(?:(?:the|my|our)\s|\S+['’]s?(?:\s|$))/i;
