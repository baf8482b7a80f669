import { speciesKeys } from '../../species/species-lists.ts';
import { SPECIES } from '../../species/species-table.ts';
import { pointerSteps } from '../yaml/json-pointer.ts';

/**
 * What kind of input stands at a place of a scenario, as its rank among those that as a rule move
 * damp and its cost most: 0 moves them most. Inputs of one kind have one unit.
 *
 * @param pointer  RFC 6901
 * @returns null for an input of no such kind
 */
export function inputRank(pointer: string): number | null {
  const steps = pointerSteps(pointer) ?? [];
  const rank = KINDS.findIndex((patterns) => patterns.some((pattern) => fits(steps, pattern)));
  return rank < 0 ? null : rank;
}

/**
 * Whether the input at a place can move heat, water or money at all: carbon, particles and the like
 * cannot, and both ends of a compass direction or a storey mean nothing.
 *
 * @param pointer  RFC 6901
 * @param air      whether what the air carries matters besides
 */
export function canMatter(pointer: string, air = false): boolean {
  const steps = pointerSteps(pointer) ?? [];
  const isName = (k: number): boolean => k > 0 && NAMES_FOLLOW.has(steps[k - 1]!);
  const noMatter = air ? NEVER_MATTER : NO_MATTER;
  return !steps.some((step, k) => noMatter.has(step) && !isName(k));
}

/**
 * Whether the input at a place can move how warm a home gets by itself: sun that comes in, what shell and
 * mass make of it, and air that comes in through leaks and open windows.
 *
 * @param pointer  RFC 6901
 */
export function movesSummerHeat(pointer: string): boolean {
  const steps = pointerSteps(pointer) ?? [];
  return OF_SUMMER.some((pattern) => fits(steps, pattern));
}

/** A step that may be any name; the rest of the path, whatever it is. */
const ANY = Symbol('any');
const REST = Symbol('rest');
type Pattern = readonly (string | typeof ANY | typeof REST)[];

function fits(steps: readonly string[], [head, ...tail]: Pattern): boolean {
  if (head === REST) {
    return tail.length === 0 ? steps.length > 0 : fits(steps.slice(-tail.length), tail);
  }
  if (head === undefined || steps.length === 0) return head === undefined && steps.length === 0;
  return (head === ANY || head === steps[0]) && fits(steps.slice(1), tail);
}

const KINDS: readonly (readonly Pattern[])[] = [
  [['home', 'leakage', REST]],
  [['household', 'activities', ANY, 'water']],
  [[REST, 'cold spot factor']],
  [['home', 'build', 'wall u-value']],
  [['sensors', 'humidity', 'bias']],
  [['devices', ANY, 'target']],
  [['devices', ANY, 'power']],
  [
    ['devices', ANY, 'label'],
    ['devices', ANY, 'flow'],
  ],
  [['money', ANY, 'price']],
  [
    ['heating', 'efficiency'],
    ['heating', 'cop'],
  ],
  [['heating', 'setpoint']],
  [['heating', 'season', 'mean below']],
  [['cooling', 'setpoint']],
  [['cooling', 'power']],
  [['cooling', 'eer']],
  [['home', 'background vents']],
  [['household', 'bodies', ANY, 'water']],
  [
    ['home', 'doors', 'mixing'],
    ['home', 'doors', 'shut'],
  ],
  [['home', 'build', 'furnishing factor']],
  [
    ['home', 'build', 'window u-value'],
    ['home', 'build', 'roof u-value'],
    ['home', 'build', 'floor u-value'],
  ],
  [['money', 'discount rate']],
];

const OF_SUMMER: readonly Pattern[] = [
  ...['window shading', 'window g-value', 'window u-value', 'window frame', 'loft'],
  ...['wall u-value', 'roof u-value', 'absorptance', 'internal mass', 'usual airing', 'ach50'],
]
  .map((key): Pattern => [REST, key])
  .concat([[REST, 'panes', ANY, 'area']]);

/** Keys under which people choose the names. */
const NAMES_FOLLOW: ReadonlySet<string> = new Set(['rooms', 'devices']);

const NEVER_MATTER: ReadonlySet<string> = new Set(['carbon', 'faces', 'storey']);
const NO_MATTER: ReadonlySet<string> = new Set([
  ...NEVER_MATTER,
  ...['deposition', 'penetration', 'window penetration', 'materials', 'own species'],
  ...SPECIES.flatMap(speciesKeys),
  ...['paint', 'clean air'],
]);
