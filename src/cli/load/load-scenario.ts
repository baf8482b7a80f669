import { dirname, isAbsolute, join } from 'node:path';
import type { CheckScope, Scenario } from '../../scenario/read-scenario.ts';
import type { YamlFile } from '../../scenario/yaml/read-yaml.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { Io } from '../io.ts';

/** A scenario with the text of every file it names. */
export interface LoadedScenario {
  readonly scenario: Scenario;
  /** The scenario as it was written. */
  readonly text: string;
  /** Texts by the path that the scenario wrote. */
  readonly files: ReadonlyMap<string, string>;
  /** The weather's path as reached from here, and its text. */
  readonly weatherFile: string;
  readonly weatherText: string;
  /** Every path that was read, as reached from here. */
  readonly read: readonly string[];
}

/**
 * Read a scenario and the files it names, whose paths count from the scenario's own folder.
 *
 * @param scope         which plans and doubts to check
 * @param otherWeather  an outdoor file, as reached from here, in place of the scenario's
 * @param named         told the names of the plans before they are checked
 * @throws InputProblems with everything that is wrong with the text, or with every missing file
 */
export async function loadScenario(
  io: Io,
  path: string,
  scope: CheckScope,
  otherWeather: string | undefined,
  named: (plans: readonly string[]) => Promise<void> | undefined,
): Promise<LoadedScenario> {
  const text = await io.readText(path, MOST_SCENARIO);
  const { readYaml } = await import('../../scenario/yaml/read-yaml.ts');
  const { planNames } = await import('../../scenario/plan-chain.ts');
  const { checkScenario } = await import('../../scenario/read-scenario.ts');
  const check = (yaml: YamlFile) => checkScenario(yaml, scope);
  const yaml = readYaml(text, path, check);
  await named(planNames(yaml.value));
  const { namedAt } = await import('../../scenario/named-at.ts');
  const scenario = check(yaml);
  const reach = (other: string) => (isAbsolute(other) ? other : join(dirname(path), other));
  const weatherFile = otherWeather ?? reach(scenario.weather);
  const files = new Map<string, string>();
  const read = [path];
  const problems: Problem[] = [];
  for (const file of scenario.files) {
    const from = file === scenario.weather ? weatherFile : reach(file);
    read.push(from);
    try {
      files.set(file, await io.readText(from, MOST_DATA));
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      const place = from === otherWeather ? {} : namedAt(scenario, file);
      const said = (got: string) => (from === otherWeather ? got : `${got}: ${from}`);
      problems.push(...error.problems.map((p) => ({ ...p, ...place, got: said(p.got) })));
    }
  }
  if (problems.length > 0) throw new InputProblems(problems);
  return { scenario, text, files, weatherFile, weatherText: files.get(scenario.weather)!, read };
}

/** Largest scenario, recipe or map. [byte] */
export const MOST_SCENARIO = 5e5;
/** Largest weather or tariff file: a year of minutes with a dozen columns has 40 MB. [byte] */
export const MOST_DATA = 45e6;
