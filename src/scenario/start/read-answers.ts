import { InputProblems } from '../../units/problem.ts';
import { ageOf } from '../presets/fabric.ts';
import type { Finding } from '../unplaced-problem.ts';
import { placed } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { readYaml } from '../yaml/read-yaml.ts';
import { tariffOf } from './price-answer.ts';
import { type Answers, type Question, troublesOf } from './question.ts';
import type { StartContext } from './start-context.ts';
import { keyLine } from './yaml-text.ts';

/**
 * Answers from a YAML file: a mapping from ids of questions to what a person would type or choose.
 *
 * @throws InputProblems with every answer that will not do, each with its place
 */
export function readAnswers(
  text: string,
  file: string,
  questions: readonly Question[],
  context: StartContext,
): Answers {
  const yaml = readYaml(text, file);
  const { value } = yaml;
  if (value !== null && value !== undefined && !isMapping(value)) {
    const expected = 'a mapping from questions to answers, such as kind: flat';
    const place = { file, line: 1, column: 1, where: '', hint: '' };
    throw new InputProblems([{ ...place, expected, got: 'something else' }]);
  }
  const answers: Record<string, string | readonly string[]> = {};
  const findings: Finding[] = [];
  const several = new Set(questions.flatMap(({ kind, id }) => (kind === 'several' ? [id] : [])));
  for (const [id, given] of Object.entries(value ?? {})) {
    const words = Array.isArray(given) ? given.map(plainText) : plainAnswer(given, several.has(id));
    if (words === null || [words].flat().includes(null)) {
      findings.push({ path: [id], expected: 'text, or a list of texts' });
    } else {
      answers[id] = words as string | string[];
    }
  }
  const { built } = answers;
  if (typeof built === 'string' && YEAR.test(built)) answers['built'] = ageOf(Number(built));
  const tariff = tariffOf(answers);
  if (tariff !== null) answers['tariff'] = tariff;
  for (const { id, expected, hint } of troublesOf(questions, answers, context)) {
    findings.push({ path: [id], expected, ...(hint !== '' && { hint }) });
  }
  if (findings.length > 0) {
    throw new InputProblems(placed(findings, value, [{ by: 'file', yaml, under: [] }]));
  }
  return answers;
}

/** One answer, of several that may be chosen also as they stand in a sentence: "damp, cost". */
function plainAnswer(given: unknown, several: boolean): string | readonly string[] | null {
  const text = plainText(given);
  return several && text !== null ? text.split(',').map((each) => each.trim()) : text;
}

/** Answers as the text of a file that `readAnswers` reads. */
export const answersText = (answers: Answers): string =>
  Object.entries(answers)
    .map(([id, given]) => `${keyLine(id, given)}\n`)
    .join('');

/** A year stands for the age band that it lies in. */
const YEAR = /^(1[5-9]|20)\d\d$/;

const plainText = (value: unknown): string | null =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : null;
