import { InputProblems, type Problem } from '../../units/problem.ts';
import { pointerSteps } from './json-pointer.ts';
import type { Layer } from './layers.ts';
import { isMapping } from './merge-patch.ts';
import { readYaml } from './read-yaml.ts';

/** One `--set /pointer=value`, read. */
export interface Setting {
  /** The setting as it was typed, for messages. */
  readonly words: string;
  readonly steps: readonly string[];
  readonly value: unknown;
}

/**
 * Read `--set` words. The value is YAML, so that 19, "66 °F", [a, b] and null mean what they mean
 * in the file; null removes.
 *
 * @throws InputProblems for words without "=" or a value, pointers that are none, values that are not YAML
 */
export function readSettings(words: readonly string[]): Setting[] {
  const problems: Problem[] = [];
  const settings = words.flatMap((typed): Setting[] => {
    const file = `--set ${typed}`;
    const refuse = (expected: string, got: string, hint: string): [] => {
      problems.push({ file, line: 0, column: 0, where: '', expected, got, hint });
      return [];
    };
    const [whole, written] = POINTER.exec(typed) ?? [];
    if (whole === undefined || written === undefined)
      return refuse('/pointer=value', JSON.stringify(typed), 'such as /heating/setpoint=19');
    const pointer = unquoted(written);
    const steps = pointer === null ? null : pointerSteps(pointer);
    if (steps === null || steps.some((step) => step === '' || step === '__proto__')) {
      const got = pointer === null ? written : JSON.stringify(pointer);
      return refuse('a pointer such as /heating/setpoint', got, 'a slash in a name is written ~1');
    }
    const text = typed.slice(whole.length);
    // A plain number, as studies set by the hundred, is known without a parser.
    if (NUMBER.test(text)) return [{ words: file, steps, value: Number(text) }];
    try {
      const { document, value } = readYaml(text, file);
      if (document.contents !== null) return [{ words: file, steps, value }];
      return refuse('a value after "="', 'nothing', `${whole}null removes the key`);
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      // A place within the few words of a value would tell nobody anything.
      problems.push(...error.problems.map((each) => ({ ...each, line: 0, column: 0 })));
      return [];
    }
  });
  if (problems.length > 0) throw new InputProblems(problems);
  return settings;
}

/**
 * `/pointer=value` words. A pointer with "=" in it is written in quotes, as JSON, because the first
 * "=" ends one without.
 *
 * @param value  in YAML
 */
export function settingWords(pointer: string, value: string): string {
  return `${pointer.includes('=') ? JSON.stringify(pointer) : pointer}=${value}`;
}

/** What `settingWords` put together; null for words without a pointer and "=". */
export function pointerAndValue(words: string): { pointer: string; value: string } | null {
  const [whole, written] = POINTER.exec(words) ?? [];
  const pointer = written === undefined ? null : unquoted(written);
  if (whole === undefined || pointer === null) return null;
  return { pointer, value: words.slice(whole.length) };
}

/** The pointer of words that begin with it; null where it is quoted and no JSON. */
function unquoted(written: string): string | null {
  if (!written.startsWith('"')) return written;
  try {
    return String(JSON.parse(written));
  } catch {
    return null;
  }
}

/** The scenario with one setting laid on; what does not exist on the way is made. */
export function withSetting(raw: unknown, { words, steps, value }: Setting): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (Array.isArray(raw) || (raw === undefined && (step === '0' || step === '-'))) {
    return withItem(raw ?? [], step, rest, { words, steps, value });
  }
  const mapping: Record<string, unknown> = isMapping(raw) ? { ...raw } : {};
  if (rest.length === 0 && value === null) delete mapping[step];
  else mapping[step] = withSetting(mapping[step], { words, steps: rest, value });
  return mapping;
}

function withItem(
  list: readonly unknown[],
  step: string,
  rest: readonly string[],
  { words, value }: Setting,
): unknown[] {
  const index = step === '-' ? list.length : Number(step);
  if (!/^(\d+|-)$/.test(step) || index > list.length) {
    const expected =
      list.length === 0 ? 'item 0 of an empty list' : `an item from 0 to ${list.length}`;
    const got = JSON.stringify(step);
    const hint = 'items are counted from 0';
    throw new InputProblems([{ file: words, line: 0, column: 0, where: '', expected, got, hint }]);
  }
  if (rest.length === 0 && value === null) return list.toSpliced(index, 1);
  return list.toSpliced(index, 1, withSetting(list[index], { words, steps: rest, value }));
}

/** Settings as layers, for finding where a value was written. */
export function settingLayers(settings: readonly Setting[]): Layer[] {
  return settings.map(({ words, steps }) => ({
    by: 'set',
    words,
    path: steps.map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
  }));
}

/** Numbers that are the same in YAML and JavaScript. */
const NUMBER = /^-?\d{1,15}(\.\d{1,17})?$/;
const POINTER = /^("(?:[^"\\]|\\.)*"|[^=]*)=/s;
