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
 * The first line of a YAML text in block style that begins at a column at which nothing above it
 * does; null where there is none. For texts that are no YAML: it knows nothing of text that goes on over several
 * lines, which may begin anywhere.
 */
export function oddIndent(text: string): OddIndent | null {
  let open: readonly number[] = [0];
  let brackets = 0;
  let opens = false;
  for (const [k, row] of text.split('\n').entries()) {
    const bare = row.replaceAll(QUOTED, '""').replace(COMMENT, '').trimEnd();
    if (brackets === 0 && bare.trim() !== '') {
      const spaces = bare.length - bare.trimStart().length;
      if (bare.slice(0, spaces).includes('\t')) return null;
      if (spaces > open.at(-1)!) {
        if (!opens) return { line: k + 1, spaces, fitting: open.slice(-1) };
      } else {
        const within = open.filter((each) => each <= spaces);
        if (within.at(-1) !== spaces) {
          const beyond = open[within.length];
          return {
            line: k + 1,
            spaces,
            fitting: [within.at(-1)!, ...(beyond === undefined ? [] : [beyond])],
          };
        }
      }
      // A list item opens a level for its dash and one for what stands behind it.
      const levels = [spaces];
      let rest = bare.trimStart();
      while (/^- +\S/.test(rest)) {
        const behind = rest.slice(1).trimStart();
        levels.push(levels.at(-1)! + rest.length - behind.length);
        rest = behind;
      }
      open = [...open.filter((each) => each < spaces), ...levels];
      opens = /(?::|^-|[|>][+-]?)$/.test(rest);
      if (/[|>][+-]?$/.test(rest)) return null;
    }
    for (const letter of bare) {
      if (letter === '[' || letter === '{') brackets++;
      else if (letter === ']' || letter === '}') brackets = Math.max(0, brackets - 1);
    }
  }
  return null;
}

const QUOTED = /"(?:[^"\\]|\\.)*"|'[^']*'/g;
const COMMENT = /(?:^|\s)#.*$/;
