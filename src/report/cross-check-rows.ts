import { differenceCell, LEAST_ACH, LEAST_KWH } from '../measures/cross-check/difference.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import { figureText } from '../units/figure-text.ts';

/** Figure, rule of thumb, simulation and their difference [%], as a table has them. */
export function crossCheckRows({ handbook_cross_check, heating }: PlanMeasures): string[][] {
  const { degree_day_heating_kwh: estimate } = handbook_cross_check;
  const { ach50_over_20: rule, infiltration_ach_mean: leak } = handbook_cross_check;
  const { useful_kwh } = heating;
  return [
    [
      'heating [kWh]',
      figureText(estimate, 0),
      figureText(useful_kwh, 0),
      differenceCell(estimate, useful_kwh, LEAST_KWH),
    ],
    [
      'leakage [air changes an hour]',
      figureText(rule, 2),
      figureText(leak, 2),
      rule === null ? '-' : differenceCell(rule, leak, LEAST_ACH),
    ],
  ];
}
