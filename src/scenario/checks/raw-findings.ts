import type { Finding } from '../finding.ts';
import { activityNameFindings } from './activity-names.ts';
import { cutOffFindings } from './cut-off.ts';
import { deviceFindings } from './devices.ts';
import { gateFindings } from './gates.ts';
import { type Loose, mapping } from './leniently.ts';
import { oddFindings } from './odds.ts';
import { oneOfFindings } from './one-of.ts';
import { overlapFindings } from './overlaps.ts';
import { plainNameFindings } from './plain-names.ts';
import { roomNameFindings } from './room-names.ts';
import { ruleFindings } from './rules.ts';
import { setpointFindings } from './setpoints.ts';

/** What is wrong between fields, on a scenario that may be wrong in fields as well. */
export function rawFindings(value: unknown): Finding[] {
  const raw: Loose = mapping(value);
  return [
    ...plainNameFindings(raw),
    ...roomNameFindings(raw),
    ...activityNameFindings(raw),
    ...oneOfFindings(raw),
    ...setpointFindings(raw),
    ...overlapFindings(raw),
    ...cutOffFindings(raw),
    ...oddFindings(raw),
    ...deviceFindings(raw),
    ...ruleFindings(raw),
    ...gateFindings(raw),
  ];
}
