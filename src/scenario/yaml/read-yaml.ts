import {
  type Document,
  isAlias,
  isNode,
  LineCounter,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import { firstOf, InputProblems, type Problem } from '../../units/problem.ts';
import { keyProblems } from './key-problems.ts';
import { type OddIndent, oddIndent } from './odd-indent.ts';
import { textTrouble } from './text-trouble.ts';
import { firstUnclosed, type Unclosed } from './unclosed.ts';

/** A YAML file as plain values, with what is needed to find the place of each. */
export interface YamlFile {
  readonly file: string;
  readonly document: Document.Parsed;
  readonly lines: LineCounter;
  /** Maps, lists, text, numbers, true, false and null only. */
  readonly value: unknown;
}

/**
 * Read YAML 1.2 that a person wrote.
 *
 * @param check  finds what else is wrong where decimal commas are all that is; nothing is where absent
 * @throws InputProblems for what is not text, too large, not YAML, says a key twice, has a decimal comma, or
 *   unfolds into much more than was written
 */
export function readYaml(
  text: string,
  file: string,
  check: (yaml: YamlFile) => unknown = () => {},
): YamlFile {
  const lines = new LineCounter();
  const whole = (expected: string, got: string, hint = ''): InputProblems =>
    new InputProblems([{ file, line: 0, column: 0, where: '', expected, got, hint }]);
  const trouble = textTrouble(text);
  if (trouble !== null) throw whole(trouble.expected, trouble.got, trouble.hint);
  const document = parseDocument(text, {
    version: '1.2',
    lineCounter: lines,
    prettyErrors: false,
    logLevel: 'error', // warns nobody
    uniqueKeys: false, // keyProblems finds twins
  });
  const cause = causeOf(document.errors, text, file, lines);
  if (cause.length > 0) throw new InputProblems(cause);
  const ofKeys = keyProblems(document, file, lines);
  const others = [
    ...saidOf(document.errors).map((error) => syntaxProblem(error, text, file, lines)),
    ...(text.includes('*') ? aliasProblems(document, file, lines) : []),
  ];
  if (others.length > 0 || !ofKeys.checkable) {
    throw new InputProblems([...others, ...ofKeys.problems]);
  }
  let value: unknown;
  try {
    value = document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    // All aliases lead somewhere, so they are too many.
    const got = 'aliases of aliases that unfold to many more';
    throw whole(`aliases (*) that unfold to no more than ${MOST_ALIASES} copies`, got);
  }
  if (holdsItself(value, [])) throw whole('aliases (*) that end', 'one that holds itself');
  const yaml = { file, document, lines, value };
  if (ofKeys.problems.length > 0)
    throw new InputProblems(withFurther(ofKeys.problems, yaml, check));
  return yaml;
}

/**
 * Why the parser stumbled, where one thing is seen to be behind it all: a bracket that nothing closes, with
 * what is wrong before it, or a line at a column of its own. Empty where none is.
 */
function causeOf(
  errors: readonly YAMLError[],
  text: string,
  file: string,
  lines: LineCounter,
): readonly Problem[] {
  const [first] = errors;
  if (first === undefined) return [];
  const open = firstUnclosed(text);
  if (open !== null) {
    // Whatever stumbles behind it follows from it.
    const earlier = errors.filter(({ pos }) => pos[0] < open.offset);
    return [
      ...earlier.slice(0, MOST_SAID).map((error) => syntaxProblem(error, text, file, lines)),
      unclosedProblem(open, text, file, lines),
    ];
  }
  const odd = oddIndent(text);
  return odd !== null && isNear(first, odd, lines) ? [indentProblem(odd, text, file)] : [];
}

/** Problems together with those that a check finds besides, in the order of lines. */
function withFurther(
  problems: readonly Problem[],
  yaml: YamlFile,
  check: (yaml: YamlFile) => unknown,
): readonly Problem[] {
  try {
    check(yaml);
    return problems;
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return [...problems, ...error.problems].sort((a, b) => a.line - b.line || a.column - b.column);
  }
}

/** Whether the parser stumbled where a line stands under no other, and not over something else further up or down. */
const isNear = (error: YAMLError, { line }: OddIndent, lines: LineCounter): boolean =>
  Math.abs(lines.linePos(error.pos[0]).line - line) <= 1;

/** What is plainly wrong alone, where anything is: the rest follows from it. */
function saidOf(errors: readonly YAMLError[]): readonly YAMLError[] {
  const plain = errors.filter(({ code }) => WORDS[code] !== undefined);
  return (plain.length > 0 ? plain : errors).slice(0, MOST_SAID);
}

function indentProblem({ line, spaces, fitting }: OddIndent, text: string, file: string): Problem {
  const written = (text.split('\n')[line - 1] ?? '').trim().slice(0, 60);
  return {
    ...{ file, line, column: spaces + 1, where: '' },
    expected: `${fitting.join(' or ')} spaces before ${JSON.stringify(written)}, as before the line that it belongs beside`,
    got: `${spaces}`,
    hint: '',
  };
}

function syntaxProblem(error: YAMLError, text: string, file: string, lines: LineCounter): Problem {
  const { line, col } = lines.linePos(error.pos[0]);
  const written = (text.split('\n')[line - 1] ?? '').trim().slice(0, 60);
  const [expected, got, hint] = WORDS[error.code] ?? [
    'YAML',
    `${JSON.stringify(written)}, where it stops being YAML`,
    error.message.split('\n')[0] ?? '',
  ];
  return { file, line, column: col, where: '', expected, got, hint };
}

function unclosedProblem(
  { offset, opens, closes }: Unclosed,
  text: string,
  file: string,
  lines: LineCounter,
): Problem {
  const { line, col } = lines.linePos(offset);
  const isLast = !/\n\s*\S/.test(text.slice(offset));
  const expected = `a "${closes}" that closes this "${opens}"`;
  const hint = isLast ? '' : 'the lines behind it are read as part of it';
  return { file, line, column: col, where: '', expected, got: 'none', hint };
}

/** Aliases (*name) with no anchor (&name) before them; of very many the first. */
function aliasProblems(
  document: Document.Parsed,
  file: string,
  lines: LineCounter,
): readonly Problem[] {
  const problems: Problem[] = [];
  const anchors = new Set<string>();
  visit(document, {
    Node(_, node) {
      if (isAlias(node)) {
        if (anchors.has(node.source)) return;
        const { line, col: column } = lines.linePos(node.range?.[0] ?? 0);
        const expected = `an anchor &${node.source} further up`;
        const got = `the alias *${node.source} alone`;
        problems.push({ file, line, column, where: '', expected, got, hint: '' });
      } else if (isNode(node) && node.anchor !== undefined) anchors.add(node.anchor);
    },
  });
  return firstOf(problems, MOST_UNANCHORED);
}

/** True where a list or mapping comes back inside itself. */
function holdsItself(value: unknown, within: readonly unknown[]): boolean {
  if (value === null || typeof value !== 'object') return false;
  if (within.includes(value)) return true;
  return Object.values(value).some((inner) => holdsItself(inner, [...within, value]));
}

const MOST_ALIASES = 100;
const MOST_UNANCHORED = 20;
const MOST_SAID = 3; // of mistakes in YAML itself: later ones follow from the first

const WORDS: Readonly<Partial<Record<string, readonly [string, string, string]>>> = {
  TAB_AS_INDENT: ['spaces before the first word of a line', 'a tab', 'YAML forbids tabs there'],
  KEY_OVER_1024_CHARS: ['keys of at most 1024 characters', 'a longer one', ''],
  MULTIPLE_DOCS: ['one document', 'a second one after "---"', 'one scenario a file'],
};
