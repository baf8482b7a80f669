import type { RunInput } from '../../src/engine/run.ts';

/**
 * Input of a run that builds from before some keys were renamed understand too: what those keys hold
 * is given under the earlier name as well. Both builds then get one and the same object.
 */
export function withEarlierNames(input: RunInput): RunInput {
  const { home, household, automation } = input;
  return addNames({
    ...input,
    home: addTo(home),
    household: { ...addTo(household), clock: household.clock },
    ...(automation === undefined ? {} : { automation: addTo(automation) }),
  });
}

/** A copy of plain data in which all objects have the earlier names of their keys. */
function addTo<T>(data: T): T {
  if (Array.isArray(data)) return data.map(addTo) as T;
  if (typeof data !== 'object' || data === null) return data;
  const copied = Object.entries(data).map(([key, value]) => [key, addTo(value)]);
  return addNames(Object.fromEntries(copied));
}

function addNames<T extends object>(data: T): T {
  const earlier = Object.entries(data).flatMap(([key, value]) =>
    (EARLIER_NAMES[key] ?? []).map((name) => [name, value]),
  );
  return { ...data, ...Object.fromEntries(earlier) };
}

/** By today's name. None of the earlier ones has another meaning today. */
const EARLIER_NAMES: Readonly<Record<string, readonly string[]>> = {
  spinUpDays: ['leadInDays'],
  schedule: ['stays', 'line'], // of a person, of a device that runs by the clock
  onDelay: ['dwell'],
  openShare: ['wide'],
};
