import type * as z from 'zod';
import { findingsOf, placed } from '../../scenario/unplaced-problem.ts';
import { placeOf } from '../../scenario/yaml/place-of.ts';
import { readYaml, type YamlFile } from '../../scenario/yaml/read-yaml.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';

/**
 * A YAML file read, checked against a model, and handed to whoever knows what it means.
 *
 * Problems that `use` finds name a value by its path only; they come back with its line.
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

function withPlace(problem: Problem, yaml: YamlFile): Problem {
  if (problem.line > 0 || problem.path === undefined) return problem;
  return { ...problem, ...placeOf(yaml, problem.path).place };
}
