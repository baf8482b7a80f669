import { nearestName } from '../../units/nearest-name.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { type Finding, placed } from '../unplaced-problem.ts';
import { validate } from '../validate.ts';
import { pathWords, valueAt, valueWords } from '../yaml/path-words.ts';
import type { Path } from '../yaml/place-of.ts';
import { withSetting } from '../yaml/settings.ts';
import { mapping } from './tolerant-readers.ts';

/** Tries low and high of doubts on one scenario. */
export interface EndCheck {
  readonly raw: unknown;
  /** The scenario as it is meant; null where it is wrong anyhow. */
  readonly data: ScenarioData | null;
  /** What either end makes wrong that was not before, placed at the doubt, `path`. */
  findings(path: Path, steps: readonly string[], ends: readonly number[]): Finding[];
}

export function createEndCheck(raw: unknown): EndCheck {
  let asIs: ReturnType<typeof validate> | undefined;
  const check = () => {
    asIs ??= validate(raw);
    return asIs;
  };

  /** What one end makes wrong; of what it does elsewhere only the first, the rest mostly follows. */
  function wrongAt(steps: readonly string[], value: number): Wrong[] {
    const known = new Set(check().findings.map((finding) => wordsOf(finding, raw)));
    let changed: unknown;
    try {
      changed = withSetting(raw, { words: '', steps, value });
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      return error.problems.map((problem) => ({ at: 'key', problem }));
    }
    const wrong = validate(changed)
      .findings.filter((finding) => !known.has(wordsOf(finding, changed)))
      .map((finding): Wrong => {
        const { path, key = false } = finding;
        const on = path.length <= steps.length && path.every((s, k) => String(s) === steps[k]);
        const at = on && key ? 'key' : on && path.length === steps.length ? 'value' : 'elsewhere';
        return { at, problem: placed([finding], changed, [])[0]! };
      });
    const here = wrong.filter(({ at }) => at !== 'elsewhere');
    return here.length > 0 ? here : wrong.slice(0, 1);
  }

  function findings(path: Path, steps: readonly string[], ends: readonly number[]): Finding[] {
    const both = ends.map((end) => wrongAt(steps, end));
    const always = (one: Wrong) => both.every((wrong) => wrong.some((other) => same(one, other)));
    return both.flatMap((wrong, k) =>
      wrong.map((one): Finding => {
        const { where, expected, got, hint } = one.problem;
        if (one.at === 'key') return { path, key: true, expected, got, hint };
        if (one.at === 'value') return { path: [...path, k], expected, got, hint };
        const why = `with which ${where} is wrong: expected ${expected}, got ${got}`;
        if (!always(one)) {
          const fits = 'a number with which the scenario is right';
          return { path: [...path, k], expected: fits, got: `${ends[k]}, ${why}`, hint };
        }
        const pointer = JSON.stringify(path.at(-1));
        const fits = 'a pointer to a number of the scenario';
        const near = nearestStep(raw, steps);
        return { path, key: true, expected: fits, got: `${pointer}, ${why}`, hint: near || hint };
      }),
    );
  }

  return {
    raw,
    get data() {
      return check().data;
    },
    findings,
  };
}

/** Something wrong with an end: with its pointer, with its value there, or with another value. */
interface Wrong {
  readonly at: 'key' | 'value' | 'elsewhere';
  readonly problem: Problem;
}

const same = (a: Wrong, b: Wrong): boolean =>
  a.problem.where === b.problem.where &&
  a.problem.expected === b.problem.expected &&
  a.problem.got === b.problem.got;

const wordsOf = ({ path, expected, got }: Finding, raw: unknown): string =>
  [pathWords(path), expected, got ?? valueWords(valueAt(raw, path))].join('\n');

/** The name that was meant by the first step that leads nowhere; empty where none is near. */
function nearestStep(raw: unknown, steps: readonly string[]): string {
  const lost = steps.findIndex((_, k) => valueAt(raw, steps.slice(0, k + 1)) === undefined);
  if (lost < 0) return '';
  const names = Object.keys(mapping(valueAt(raw, steps.slice(0, lost))));
  const near = nearestName(steps[lost]!, names);
  return near === null ? '' : `did you mean ${JSON.stringify(near)}?`;
}
