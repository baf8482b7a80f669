/** A line that stands under no line above it, and how far lines above it stand. */
export interface OddIndent {
  /** From 1. */
  readonly line: number;
  /** Spaces before it. */
  readonly spaces: number;
  /** Spaces before the lines that it may belong beside, fewest first. */
  readonly fitting: readonly number[];
}

/**
 * The first line of a YAML text in block style that begins at a column at which nothing above it does; null
 * where there is none. For texts that are no YAML: it knows nothing of text that goes on over several lines,
 * which may begin anywhere.
 */
export function oddIndent(text: string): OddIndent | null {
  let open: readonly number[] = [0];
  let opens = false;
  let brackets = 0;
  for (const [k, row] of text.split('\n').entries()) {
    const bare = row.replaceAll(QUOTED, '""').replace(COMMENT, '').trimEnd();
    if (brackets === 0 && bare !== '') {
      const spaces = bare.length - bare.trimStart().length;
      if (bare.slice(0, spaces).includes('\t')) return null;
      const fitting = fittingInstead(spaces, open, opens);
      if (fitting !== null) return { line: k + 1, spaces, fitting };
      const { levels, rest } = levelsOf(bare.trimStart(), spaces);
      if (BLOCK_TEXT.test(rest)) return null;
      open = [...open.filter((each) => each < spaces), ...levels];
      opens = OPENS.test(rest);
    }
    brackets = openBrackets(bare, brackets);
  }
  return null;
}

/** Spaces that a line may have instead of its own; null where its own will do. @param open  levels of the lines above */
function fittingInstead(
  spaces: number,
  open: readonly number[],
  opens: boolean,
): readonly number[] | null {
  const within = open.filter((each) => each <= spaces);
  const [below, beyond] = [within.at(-1)!, open[within.length]];
  if (below === spaces) return null;
  if (beyond !== undefined) return [below, beyond];
  return opens ? null : [below];
}

/** Levels that a line opens, and what stands behind its dashes: a list item has one for its dash and one for that. */
function levelsOf(words: string, spaces: number): { levels: readonly number[]; rest: string } {
  const levels = [spaces];
  let rest = words;
  while (/^- +\S/.test(rest)) {
    const behind = rest.slice(1).trimStart();
    levels.push(levels.at(-1)! + rest.length - behind.length);
    rest = behind;
  }
  return { levels, rest };
}

/** How many brackets and braces are open behind a line. @param before  open before it */
function openBrackets(bare: string, before: number): number {
  let brackets = before;
  for (const letter of bare) {
    if (letter === '[' || letter === '{') brackets++;
    else if (letter === ']' || letter === '}') brackets = Math.max(0, brackets - 1);
  }
  return brackets;
}

const QUOTED = /"(?:[^"\\]|\\.)*"|'[^']*'/g;
const COMMENT = /(?:^|\s)#.*$/;
/** A key or dash without a value: lines below it stand deeper. */
const OPENS = /(?::|^-)$/;
const BLOCK_TEXT = /[|>][+-]?$/;
