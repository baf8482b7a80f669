import { couldStand, givenValue, numberPointers } from '../../scenario/edits/scenario-facts.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { valueWords } from '../../scenario/yaml/path-words.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { nearestName } from '../../units/nearest-name.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import {
  type PlanVariant,
  prepareVariant,
  variantScenario,
  withSettings,
} from '../plan-variant.ts';
import { type Axis, aboutAxis, endsOf } from './axis.ts';

/**
 * Refuse axes that name no number, given or assumed, of one of the plans, or whose least or greatest
 * value could not stand there.
 *
 * @param variants  the plans as they are without the axes
 * @throws InputProblems
 */
export function checkAxes(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  variants: readonly PlanVariant[],
  axes: readonly Axis[],
): void {
  const problems = axes.flatMap((axis) => {
    const missing = variants.flatMap((variant) => {
      const problem = placeProblem(scenario, files, variant, axis);
      return problem === null ? [] : [problem];
    });
    if (missing.length > 0) return missing.slice(0, 1);
    return endsOf(axis).flatMap((end) => endProblems(scenario, files, variants[0]!, axis, end));
  });
  if (problems.length > 0) throw new InputProblems(problems);
}

function placeProblem(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  variant: PlanVariant,
  { pointer }: Axis,
): Problem | null {
  const raw = variantScenario(scenario, variant);
  const given = givenValue(raw, pointer);
  if (typeof given === 'number') return null;
  const { assumed } = prepareVariant(scenario, files, variant);
  const row = assumed.find(({ path }) => path === pointer);
  if (typeof row?.value === 'number') return null;
  const expected = `a number of the scenario in plan ${variant.plan}`;
  const other = given ?? row?.value;
  if (other !== undefined) {
    const inside = numberPointers(raw).filter(
      // Clock times are numbers too, and none may be written as such.
      (one) => one.startsWith(`${pointer}/`) && couldStand(raw, one, Number(givenValue(raw, one))),
    );
    const hint = inside.length === 0 ? '' : `vary ${listWords(inside)}`;
    return aboutAxis(pointer, { expected, got: valueWords(other), hint });
  }
  const numbers = assumed.filter(({ value }) => typeof value === 'number').map(({ path }) => path);
  const near = nearestName(pointer, [...numberPointers(raw), ...numbers]);
  const hint = near === null ? '' : `did you mean ${near}?`;
  return aboutAxis(pointer, { expected, got: 'none at this place', hint });
}

function listWords(pointers: readonly string[]): string {
  if (pointers.length <= TOLD) return pointers.join(' or ');
  return `${pointers.slice(0, TOLD).join(', ')} or one of ${pointers.length - TOLD} more`;
}

function endProblems(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  variant: PlanVariant,
  { pointer }: Axis,
  end: number,
): readonly Problem[] {
  try {
    prepareVariant(scenario, files, withSettings(variant, [settingWords(pointer, String(end))]));
    return [];
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return error.problems.map((problem) => ({ ...problem, file: `--vary ${pointer}` }));
  }
}

const TOLD = 2;
