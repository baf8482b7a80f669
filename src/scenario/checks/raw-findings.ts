import type { Finding } from '../unplaced-problem.ts';
import { activityNameFindings } from './activity-names.ts';
import { cutOffFindings } from './cut-off.ts';
import { deviceFindings } from './devices.ts';
import { directionFindings } from './directions.ts';
import { exposedPartFindings } from './exposed-parts.ts';
import { gateFindings } from './gates.ts';
import { impossibleValueFindings } from './impossible-values.ts';
import { logFindings } from './log.ts';
import { oneOfFindings } from './one-of.ts';
import { oneThermostatFindings } from './one-thermostat.ts';
import { overlapFindings } from './overlaps.ts';
import { ownSpeciesFindings } from './own-species.ts';
import { plainNameFindings } from './plain-names.ts';
import { roomNameFindings } from './room-names.ts';
import { ruleFindings } from './rules.ts';
import { setpointFindings } from './setpoints.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';
import { undeclaredSpeciesFindings } from './undeclared-species.ts';

/** What is wrong between fields, on a scenario that may be wrong in fields as well. */
export function rawFindings(value: unknown): Finding[] {
  const raw: UncheckedMapping = mapping(value);
  return [
    ...plainNameFindings(raw),
    ...roomNameFindings(raw),
    ...oneThermostatFindings(raw),
    ...activityNameFindings(raw),
    ...oneOfFindings(raw),
    ...directionFindings(raw),
    ...setpointFindings(raw),
    ...overlapFindings(raw),
    ...cutOffFindings(raw),
    ...impossibleValueFindings(raw),
    ...exposedPartFindings(raw),
    ...deviceFindings(raw),
    ...ruleFindings(raw),
    ...gateFindings(raw),
    ...undeclaredSpeciesFindings(raw),
    ...ownSpeciesFindings(raw),
    ...logFindings(raw),
  ];
}
