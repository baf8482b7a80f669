import { raiseRoomSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { settingsFromPatch } from '../../scenario/yaml/settings-from-patch.ts';
import { figureText } from '../../units/figure-text.ts';
import type { Option } from '../options.ts';
import { prepareVariant, variantScenario } from '../plan-variant.ts';
import type { EqualSafety } from './equal-safety.ts';

/** The baseline with one room kept as much warmer as was found to be as safe; null where none was. */
export function warmerOption(
  { scenario, files }: { scenario: Scenario; files: ReadonlyMap<string, string> },
  baseline: Option,
  { room, warmer_by_k: kelvin, measures }: EqualSafety,
): Option | null {
  if (measures === null || kelvin === null || kelvin === 0) return null;
  const change = settingsFromPatch(raiseRoomSetpoint(baseline.raw, room, kelvin));
  const name = `${room} ${figureText(kelvin, 1)} K warmer`;
  const description = `only the ${room} is kept ${figureText(kelvin, 1)} K warmer`;
  const { plan, set } = baseline.variant;
  const variant = { plan, set: [...set, ...change], as: { name, description, purchases: [] } };
  return {
    ...{ name, description, origin: 'as safe', variant, assumedPurchases: [] },
    raw: variantScenario(scenario, variant),
    prepared: prepareVariant(scenario, files, variant),
    measures: { ...measures, plan: name },
  };
}
