import { raiseRoomSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { figureText } from '../../units/figure-text.ts';
import { theRoom } from '../../units/the-room.ts';
import type { Option } from '../options.ts';
import { prepareVariant, variantScenario, withEdit } from '../plan-variant.ts';
import type { EqualSafety } from './equal-safety.ts';

/** The baseline with one room kept as much warmer as was found to be as safe; null where none was. */
export function warmerOption(
  { scenario, files }: { scenario: Scenario; files: ReadonlyMap<string, string> },
  baseline: Option,
  { room, warmer_by_k: kelvin, measures }: EqualSafety,
): Option | null {
  if (measures === null || kelvin === null || kelvin === 0) return null;
  const name = `${room} ${figureText(kelvin, 1)} °C warmer`;
  const description = `only ${theRoom(room)} is kept ${figureText(kelvin, 1)} °C warmer`;
  const variant = {
    ...withEdit(baseline.variant, raiseRoomSetpoint(baseline.raw, room, kelvin)),
    as: { name, description, purchases: [] },
  };
  return {
    ...{ name, description, origin: 'as safe', variant, assumedPurchases: [] },
    raw: variantScenario(scenario, variant),
    prepared: prepareVariant(scenario, files, variant),
    measures: { ...measures, plan: name },
  };
}
