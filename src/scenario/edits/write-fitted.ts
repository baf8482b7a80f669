import { isMap, parseDocument } from 'yaml';
import { planChain } from '../plan-chain.ts';
import { pointerSteps } from '../yaml/json-pointer.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { readSettings } from '../yaml/settings.ts';

/** What a fit says of one value. */
export interface FittedRange {
  readonly low: number;
  readonly high: number;
  /** What stood there or was assumed; null for nothing. */
  readonly from: number | null;
  readonly log: string;
  /** Factor that was found, where the value is one of several that it scales together. */
  readonly by?: string;
  /** False where the log does not tell the value. */
  readonly told?: false;
}

/**
 * The text of a scenario with settings written into it and what was fitted listed under `fitted`.
 * Comments and order stay as they are.
 *
 * @param text      the scenario as it was written, without faults
 * @param settings  `/pointer=value` words; where the plan changes the same section, they go into its change
 * @param fitted    by pointer
 */
export function writeFitted(
  text: string,
  plan: string,
  settings: readonly string[],
  fitted: ReadonlyMap<string, FittedRange>,
): string {
  const document = parseDocument(text, { version: '1.2' });
  for (const { steps, value } of readSettings(settings)) {
    const at = placeOf(document.toJS(), plan, steps);
    clearWay(
      (path) => document.getIn(path, true),
      (path) => document.deleteIn(path),
      at,
    );
    document.setIn(at, document.createNode(value));
  }
  const written = document.toJS();
  for (const [pointer, { low, high, from, log, by, told }] of fitted) {
    // What only the plan says stays its own: the list is about the home as it is.
    if (isOfPlan(written, plan, pointerSteps(pointer) ?? [])) continue;
    const more = { ...(by !== undefined && { by }), ...(told === false && { told }) };
    const range = { low, high, ...(from !== null && { from }), ...more, log };
    document.setIn(['fitted', pointer], document.createNode(range, { flow: true }));
  }
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}

/** In the last change that says it, of the plan and those it builds on; in the home as it is where none does. */
function placeOf(value: unknown, plan: string, steps: readonly string[]): string[] {
  const chain = planChain(value, plan);
  const names = 'names' in chain ? chain.names : [];
  const changes = names.map((name) => ['plans', name, 'change', ...steps]);
  return changes.findLast((path) => hasValue(value, path)) ?? [...steps];
}

const isOfPlan = (value: unknown, plan: string, steps: readonly string[]): boolean =>
  placeOf(value, plan, steps).length > steps.length;

function hasValue(value: unknown, path: readonly string[]): boolean {
  let here = value;
  for (const step of path) {
    if (!isMapping(here) || !(step in here)) return false;
    here = here[step];
  }
  return true;
}

/** Take away what is written where a mapping has to stand. */
function clearWay(
  get: (path: readonly string[]) => unknown,
  remove: (path: readonly string[]) => unknown,
  steps: readonly string[],
): void {
  for (let k = 1; k < steps.length; k++) {
    const node = get(steps.slice(0, k));
    if (node !== undefined && !isMap(node)) remove(steps.slice(0, k));
  }
}
