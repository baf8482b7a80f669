/** Why a text should not be given to a YAML parser at all: ends of a problem's sentences. */
export interface TextTrouble {
  readonly expected: string;
  readonly got: string;
  readonly hint: string;
}

/** What is wrong with a text as a whole, null for nothing. */
export function textTrouble(text: string): TextTrouble | null {
  if (text.length > LARGEST) {
    const expected = `at most ${LARGEST / 1e6} MB of text`;
    const got = `${(text.length / 1e6).toFixed(1)} MB`;
    return { expected, got, hint: 'weather stands in its own file' };
  }
  const odd = NOT_TEXT.exec(text);
  if (odd !== null) {
    const line = text.slice(0, odd.index).split('\n').length;
    return {
      expected: 'a text file in UTF-8',
      got: `a byte that is not text in line ${line}`,
      hint: 'is it a picture, a spreadsheet or an archive?',
    };
  }
  const deep = lineNestedDeeply(text);
  if (deep === 0) return null;
  const expected = `no more than ${DEEPEST} levels of nesting`;
  return { expected, got: `more in line ${deep}`, hint: '' };
}

/**
 * The first line that nests deeper than any scenario, 0 for none.
 *
 * The parser walks levels by calling itself, so this is asked before it starts. Brackets in quotes
 * count too: a hundred that never close are no title.
 */
function lineNestedDeeply(text: string): number {
  let brackets = 0;
  let line = 0;
  for (const row of text.split('\n')) {
    line++;
    const start = /^(?:[ \t]|[-?:](?=[ \t]))*/.exec(row)?.[0] ?? '';
    if (start.length > DEEPEST * 2) return line;
    for (const letter of row) {
      if (letter === '[' || letter === '{') brackets++;
      else if (letter === ']' || letter === '}') brackets = Math.max(0, brackets - 1);
      if (brackets > DEEPEST) return line;
    }
  }
  return 0;
}

const LARGEST = 500_000; // characters; a scenario has some thousands, two hundred rooms 40 000
const DEEPEST = 100; // levels; a scenario has about ten
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const NOT_TEXT = /[\u0000-\u0008\u000e-\u001f\ufffd]/;
