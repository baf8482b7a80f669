import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** "2023-01-01 00:00 to 2024-01-01 00:00 UTC (365 days)" */
export function periodText({ period }: Pick<PlanMeasures, 'period'>): string {
  const { from, to, hours } = period;
  const whole = hours % 24 === 0;
  const length = whole ? `${hours / 24} days` : `${hours} hours`;
  return `${minute(from)} to ${minute(to)} UTC (${length})`;
}

const minute = (instant: string): string => instant.slice(0, 16).replace('T', ' ');
