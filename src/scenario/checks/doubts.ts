import { mergedFor, planChain } from '../plan-chain.ts';
import type { Finding } from '../unplaced-problem.ts';
import { pointerOf, pointerSteps } from '../yaml/json-pointer.ts';
import { valueAt, valueWords } from '../yaml/path-words.ts';
import { createEndCheck, type EndCheck } from './doubt-ends.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';

/**
 * What is wrong with doubts as doubts: where they point, whether their range holds what the
 * scenario gives, and whether its ends could stand there.
 *
 * A doubt is tried on the file as it is, or, where it cannot stand there and only plans have what it
 * points into (such as a device), on the first of those. What is wrong without it is not said again.
 */
export function doubtFindings(raw: UncheckedMapping): Finding[] {
  const { doubts, ...bare } = raw;
  const plans = Object.keys(mapping(raw['plans'])).map((name) => planChain(raw, name));
  const chains = [[], ...plans.flatMap((chain) => ('names' in chain ? [chain.names] : []))];
  const checks = chains.map((names) => createEndCheck(mergedFor(bare, names)));
  return Object.entries(mapping(doubts)).flatMap(([pointer, range]): Finding[] => {
    const key = { path: ['doubts', pointer], key: true };
    const steps = pointerSteps(pointer);
    if (steps === null || steps.some((step) => step === '' || step === '__proto__')) {
      const hint = 'a slash in a name is written ~1';
      return [{ ...key, expected: POINTER, got: JSON.stringify(pointer), hint }];
    }
    if (SHARED.includes(steps[0]!)) {
      const got = `${steps[0]}, which no run varies`;
      return [{ ...key, expected: 'a doubt about the home or its people', got }];
    }
    const on = (check: EndCheck) => doubtOn(check, pointer, steps, range);
    const found = on(checks[0]!);
    if (!found.some((finding) => finding.key)) return found;
    const into = steps.slice(0, -1);
    const plan = checks.find(({ raw: one }) => valueAt(one, into) !== undefined);
    return plan === undefined ? found : on(plan);
  });
}

function doubtOn(
  check: EndCheck,
  pointer: string,
  steps: readonly string[],
  range: unknown,
): Finding[] {
  const wrong = pointerFinding(check.raw, pointer, steps);
  if (wrong !== null) return [{ path: ['doubts', pointer], key: true, ...wrong }];
  return isRange(range) ? rangeFindings(check, pointer, steps, range) : []; // said by the model
}

/** A pointer that leads past a value, or to more than one. */
function pointerFinding(
  raw: unknown,
  pointer: string,
  steps: readonly string[],
): Pick<Finding, 'expected' | 'got' | 'hint'> | null {
  const expected = 'a pointer to one number';
  const shown = JSON.stringify(pointer);
  const last = steps.findIndex((_, k) => isPlain(valueAt(raw, steps.slice(0, k + 1))));
  if (last >= 0 && last < steps.length - 1) {
    const before = pointerOf(steps.slice(0, last + 1));
    const value = valueWords(valueAt(raw, steps.slice(0, last + 1)));
    const got = `${shown}, where ${before} is ${value} already`;
    return { expected, got, hint: `did you mean ${JSON.stringify(before)}?` };
  }
  const value = valueAt(raw, steps);
  if (value === null || typeof value !== 'object') return null;
  return { expected, got: `${shown}, where the scenario has ${valueWords(value)}` };
}

function rangeFindings(
  check: EndCheck,
  pointer: string,
  steps: readonly string[],
  [low, high]: readonly [number, number],
): Finding[] {
  const path = ['doubts', pointer];
  const got = `[${low}, ${high}]`;
  const ends = check.findings(path, steps, [low, high]);
  if (!(low < high)) return [{ path, expected: 'a low below its high', got }, ...ends];
  const given = valueAt(check.data ?? check.raw, steps);
  if (typeof given !== 'number' || (given >= low && given <= high)) return ends;
  const value = Number(given.toPrecision(6));
  return [{ path, expected: `a range that holds the value ${value}`, got }, ...ends];
}

const isPlain = (value: unknown): boolean =>
  value !== undefined && value !== null && typeof value !== 'object';

const isRange = (value: unknown): value is readonly [number, number] =>
  Array.isArray(value) && value.length === 2 && value.every((end) => Number.isFinite(end));

const POINTER = 'a pointer such as /heating/setpoint';
const SHARED = ['title', 'invented', 'weather', 'doubts', 'fitted', 'plans'];
