import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addAiring, isAiredDaily } from '../../scenario/edits/add-airing.ts';
import { bothEdits, isLegalEdit } from '../../scenario/edits/edit.ts';
import { heatsAlike, raiseSetpoints } from '../../scenario/edits/raise-setpoints.ts';
import type { BuiltIn, BuiltInContext } from './built-in.ts';
import { builtInDehumidifier, builtInFan } from './built-in-devices.ts';
import { dampestRoom } from './dampest-room.ts';

/**
 * What the program proposes by itself beside a scenario's own plans: every thermostat two kelvin
 * higher, windows wide open for ten minutes mornings and evenings, an extract fan by humidity, a
 * dehumidifier in the dampest room that people use, and each two of these together.
 *
 * What the scenario has already, in the baseline or in a plan of its own, is not proposed again,
 * nor is what cannot be done in this home. Names are those of the proposals; one that a plan of the
 * scenario bears gets "proposed" before it.
 *
 * @param context   the scenario as the baseline has it and as each plan has it, as plain values
 * @param baseline  its figures, which say where it is dampest
 */
export function builtInAlternatives(context: BuiltInContext, baseline: PlanMeasures): BuiltIn[] {
  const dampest = dampestRoom(baseline);
  const proposed = [
    twoKelvinWarmer(context),
    builtInAiring(context),
    builtInFan(context, dampest, baseline.money.currency),
    dampest === null ? null : builtInDehumidifier(context, dampest, baseline.money.currency),
  ];
  const single = proposed.filter(
    (one): one is BuiltIn => one !== null && isLegalEdit(context.raw, one.change),
  );
  const pairs = single.flatMap((one, k) =>
    single.slice(k + 1).map((other) => together(one, other)),
  );
  const taken = new Set(context.plans.map(({ name }) => name));
  return [...single, ...pairs].map((one) =>
    taken.has(one.name) ? { ...one, name: `proposed ${one.name}` } : one,
  );
}

function twoKelvinWarmer({ raw, plans }: BuiltInContext): BuiltIn | null {
  const change = raiseSetpoints(raw, 2);
  if (change === null) return null;
  if (plans.some((plan) => heatsAlike(plan.raw, raw, change))) return null;
  return { name: 'warmer', description: 'every thermostat 2 °C higher', change, purchases: [] };
}

function together(one: BuiltIn, other: BuiltIn): BuiltIn {
  return {
    name: `${one.name}-and-${other.name}`,
    description: `${one.description}; ${other.description}`,
    change: bothEdits(one.change, other.change),
    purchases: [...one.purchases, ...other.purchases],
  };
}

/**
 * Airing every room for ten minutes, mornings and evenings. Not proposed where a plan has half of the
 * rooms or more aired so already.
 */
function builtInAiring({ raw, plans }: BuiltInContext): BuiltIn | null {
  if ([raw, ...plans.map((plan) => plan.raw)].some(isAiredDaily)) return null;
  return {
    name: 'aired',
    description: 'all windows wide open for ten minutes every morning and evening',
    change: addAiring(raw),
    purchases: [],
  };
}
