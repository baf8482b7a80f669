import {
  type Document,
  isMap,
  isScalar,
  LineCounter,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import { InputProblems, type Problem } from '../../units/problem.ts';

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
 * @throws InputProblems for what is not text, too large, not YAML, says a key twice, or unfolds
 *   into much more than was written
 */
export function readYaml(text: string, file: string): YamlFile {
  const lines = new LineCounter();
  const whole = (expected: string, got: string, hint = ''): InputProblems =>
    new InputProblems([{ file, line: 0, column: 0, where: '', expected, got, hint }]);
  if (text.length > LARGEST) {
    const size = (text.length / 1e6).toFixed(1);
    throw whole(
      `at most ${LARGEST / 1e6} MB of text`,
      `${size} MB`,
      'weather stands in its own file',
    );
  }
  const odd = NOT_TEXT.exec(text);
  if (odd !== null) {
    const line = text.slice(0, odd.index).split('\n').length;
    const got = `a byte that is not text in line ${line}`;
    throw whole('a text file in UTF-8', got, 'is it a picture, a spreadsheet or an archive?');
  }
  let document: Document.Parsed;
  try {
    document = parseDocument(text, { version: '1.2', lineCounter: lines, prettyErrors: false });
  } catch {
    throw whole('YAML that is not nested endlessly', 'brackets within brackets without end');
  }
  const problems = [
    ...document.errors.map((error) => syntaxProblem(error, text, file, lines)),
    ...nameProblems(document, file, lines),
  ];
  if (problems.length > 0) throw new InputProblems(problems);
  let value: unknown;
  try {
    value = document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    const expected = `aliases (*) that unfold to no more than ${MOST_ALIASES} copies`;
    throw whole(expected, error instanceof ReferenceError ? error.message : 'endless nesting');
  }
  return { file, document, lines, value };
}

function syntaxProblem(error: YAMLError, text: string, file: string, lines: LineCounter): Problem {
  const { line, col } = lines.linePos(error.pos[0]);
  const written = (text.split('\n')[line - 1] ?? '').trim().slice(0, 60);
  const told = WORDS[error.code];
  return {
    file,
    line,
    column: col,
    where: '',
    expected: told?.[0] ?? 'YAML',
    got: told?.[1] ?? `${JSON.stringify(written)}, where it stops being YAML`,
    hint: told === undefined ? (error.message.split('\n')[0] ?? '') : told[2],
  };
}

/** Names that JavaScript keeps for itself cannot be room or plan names. */
function nameProblems(document: Document.Parsed, file: string, lines: LineCounter): Problem[] {
  const problems: Problem[] = [];
  visit(document, {
    Map(_, map) {
      for (const { key } of map.items) {
        if (!isScalar(key) || isMap(key)) {
          const { line, col } = lines.linePos(map.range?.[0] ?? 0);
          const got = 'a list or mapping as a key';
          problems.push({
            file,
            line,
            column: col,
            where: '',
            expected: 'keys that are text',
            got,
            hint: '',
          });
        } else if (RESERVED.has(String(key.value))) {
          const { line, col } = lines.linePos(key.range?.[0] ?? 0);
          const got = JSON.stringify(String(key.value));
          problems.push({
            file,
            line,
            column: col,
            where: '',
            expected: 'another name',
            got,
            hint: '',
          });
        }
      }
    },
  });
  return problems;
}

const LARGEST = 2_000_000; // characters; a scenario has some thousands
const MOST_ALIASES = 100;
const RESERVED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const NOT_TEXT = /[\u0000-\u0008\u000e-\u001f\ufffd]/;

const WORDS: Readonly<Partial<Record<string, readonly [string, string, string]>>> = {
  TAB_AS_INDENT: ['spaces before the first word of a line', 'a tab', 'YAML forbids tabs there'],
  DUPLICATE_KEY: ['every key once', 'a key that stands here already', 'remove one of the two'],
  MULTIPLE_DOCS: ['one document', 'a second one after "---"', 'one scenario a file'],
};
