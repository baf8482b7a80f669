import type { Thermostat } from '../../control/automation.ts';
import type { Fuel } from '../../home/home.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';

/** What of a home, its people and its controls one plan may have otherwise than another. */
export type Change =
  | 'setting'
  | 'hours'
  | 'presence'
  | 'sensing'
  | 'source'
  | 'cooling'
  | 'devices'
  | 'blinds'
  | 'airing'
  | 'rules'
  | 'building'
  | 'people'
  | 'prices'
  | 'purchase';

/**
 * What two plans have otherwise, recognised from what was prepared for them and never from their
 * names. Emitters that only follow another building are not counted as another source of heat.
 */
export function changesBetween(one: PlanParts, other: PlanParts): ReadonlySet<Change> {
  const changed = new Set<Change>();
  for (const [change] of PARTS) {
    if (isAside(change)) continue;
    const differs = change === 'prices' ? pricesDiffer : differIn;
    if (differs(one, other, change)) changed.add(change);
  }
  // What heats a home that nothing heated comes with settings and thermostats.
  if (one.get('heated') !== other.get('heated')) {
    for (const change of OF_HEATING) changed.delete(change);
    return changed.add('source');
  }
  // Who says nothing of the season gets the one that is usual with the source.
  if (!changed.has('source') && one.get('season') !== other.get('season')) changed.add('hours');
  if (changed.has('building')) changed.delete('source');
  // Usual habits of airing follow what cools a home.
  if (changed.has('cooling') && one.get('own airing') === other.get('own airing')) {
    changed.delete('airing');
  }
  // Another setting is one at all hours; hours are those at which it holds.
  if (changed.has('setting')) changed.delete('hours');
  return changed;
}

/** What each change is recognised by, as text, so that many plans can be set side by side. */
export type PlanParts = ReadonlyMap<Change | Aside | PriceOf, string>;
type PriceOf = `price of ${Fuel}`;

const differIn = (one: PlanParts, other: PlanParts, part: Change): boolean =>
  one.get(part) !== other.get(part);

/** A fuel that one of two plans has no use for has no other price in it: what nobody gave may be missing. */
const pricesDiffer = (one: PlanParts, other: PlanParts): boolean =>
  [...one].some(([part, text]) => {
    const alike = part === 'prices' || part.startsWith('price of ');
    return alike && other.has(part) && other.get(part) !== text;
  });

/** What is no change by itself, and tells how to take others. */
type Aside = (typeof ASIDES)[number];
const ASIDES = ['season', 'heated', 'own airing'] as const;
const isAside = (change: Change | Aside): change is Aside =>
  (ASIDES as readonly string[]).includes(change);
/** What only a home that is heated has. */
const OF_HEATING: readonly Change[] = ['setting', 'hours', 'presence', 'sensing'];

export function planParts(plan: PreparedPlan): PlanParts {
  const { fuels } = plan.prices;
  return new Map<Change | Aside | PriceOf, string>([
    ...PARTS.map(([change, partsOf]) => [change, textOf(partsOf(plan))] as const),
    ...(Object.keys(fuels) as Fuel[]).map(
      (fuel) => [`price of ${fuel}`, textOf(fuels[fuel])] as const,
    ),
  ]);
}

/** The highest setting of each room; null where it is never heated. [°C] */
export function highestSettings({ household }: PreparedPlan): (number | null)[] {
  return household.setpoints.map(({ base, spells }) => {
    const settings = [base, ...spells.map(({ value }) => value)].filter(Number.isFinite);
    return settings.length === 0 ? null : Math.max(...settings);
  });
}

const PARTS: readonly (readonly [Change | Aside, (plan: PreparedPlan) => unknown])[] = [
  ['heated', ({ home: { emitters } }) => emitters.length > 0],
  ['setting', highestSettings],
  [
    'hours',
    ({ household, automation }) => [
      household.setpoints,
      automation.holidaySetback,
      automation.thermostats.map((each) => (byPresence(each) ? null : each.lead)),
    ],
  ],
  ['season', ({ automation }) => automation.heatingSeason],
  [
    'presence',
    ({ automation: { thermostats, presenceSensors } }) => [
      thermostats.some(byPresence) ? presenceSensors : null,
      thermostats.map((each) => (byPresence(each) ? each : null)).map(gateOf),
    ],
  ],
  [
    'sensing',
    ({ automation: { thermostats, callRoom } }) => [
      callRoom,
      thermostats.map(({ gate, otherwise, holdOff, lead, ...sensing }) => sensing),
    ],
  ],
  ['source', ({ home: { sources, emitters } }) => [sources, emitters]],
  [
    'cooling',
    ({ home, household, automation }) => [home.cooling, household.cooling, automation.coolingGates],
  ],
  ['devices', ({ home, automation }) => [home.devices, automation.deviceControls]],
  [
    'blinds',
    ({ home, household, automation }) => [home.blinds, household.blinds, automation.blinds],
  ],
  ['airing', ({ household, automation }) => [household.openings, automation.airings]],
  [
    'own airing',
    ({ household, automation }) => [
      household.openings.map(({ base, spells }) => [base, spells.filter(isOwn)]),
      automation.airings.filter(isOwn),
    ],
  ],
  ['rules', ({ automation }) => automation.rules],
  [
    'building',
    ({ home: { rooms, elements, panes, openings, doorways, leakage } }) => [
      ...[rooms, inAnyOrder(elements), panes, openings, inAnyOrder(doorways), leakage],
    ],
  ],
  [
    'people',
    ({ home, household: { people, activities, doorways, decaying } }) => [
      ...[people, activities, decaying],
      inAnyOrder(doorways.map((open, k) => [home.doorways[k]!.rooms, open])),
    ],
  ],
  ['prices', ({ prices }) => prices.currency],
  ['purchase', ({ purchases }) => purchases],
];

const isOwn = ({ usual }: { readonly usual?: true }): boolean => usual !== true;
const byPresence = ({ gate }: Thermostat): boolean => gate.present !== 'no matter';

/** Whether some room is heated only while somebody is seen. */
export const heatsByPresence = ({ automation }: Pick<PreparedPlan, 'automation'>): boolean =>
  automation.thermostats.some(byPresence);

const gateOf = (thermostat: Thermostat | null) =>
  thermostat && [thermostat.gate, thermostat.otherwise, thermostat.holdOff, thermostat.lead];

/** A list whose order says nothing, as that in which a file names doorways. */
const inAnyOrder = (list: readonly unknown[]): string[] => list.map(textOf).sort();

/** Plain data as text that keeps what is no finite number apart. */
const textOf = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) => (typeof part === 'number' ? String(part) : part)) ??
  '';
