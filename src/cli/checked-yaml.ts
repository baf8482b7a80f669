import type { z } from 'zod';
import { findingsOf, placed } from '../scenario/finding.ts';
import { placeOf } from '../scenario/yaml/place-of.ts';
import { readYaml, type YamlFile } from '../scenario/yaml/read-yaml.ts';
import { InputProblems, type Problem } from '../units/problem.ts';

/**
 * A YAML file read, checked against a model, and handed to whoever knows what it means.
 *
 * Problems that `use` finds name a value by its path only, in the names of the code; they come back
 * with the line and the words of the file.
 *
 * @throws InputProblems
 */
export function checkedYaml<Model extends z.ZodType, Result>(
  text: string,
  file: string,
  model: Model,
  use: (data: z.output<Model>) => Result,
): Result {
  const yaml = readYaml(text, file);
  const checked = model.safeParse(yaml.value);
  if (!checked.success) {
    const layers = [{ by: 'file' as const, yaml, under: [] }];
    throw new InputProblems(placed(findingsOf(checked.error.issues), yaml.value, layers));
  }
  try {
    return use(checked.data);
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    throw new InputProblems(error.problems.map((problem) => withPlace(problem, yaml)));
  }
}

/** "temperature.dailyRange.3" is the third item of "daily range" under "temperature". */
function withPlace(problem: Problem, yaml: YamlFile): Problem {
  if (problem.line > 0) return problem;
  const names = problem.where.split('.').map((name) => name.replaceAll(/[A-Z]/g, spaced));
  const path = names.map((name) => (/^\d+$/.test(name) ? Number(name) - 1 : name));
  return { ...problem, ...placeOf(yaml, path).place, where: names.join('.') };
}

const spaced = (capital: string): string => ` ${capital.toLowerCase()}`;
