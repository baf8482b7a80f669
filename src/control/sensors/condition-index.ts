import type { Automation, Condition } from '../automation.ts';
import type { Span } from '../span.ts';

/** Every condition that an automation asks about, in one list, and who asks. */
export interface ConditionIndex {
  readonly conditions: readonly Condition[];
  /** Places in that list, per rule and per airing habit. */
  readonly rules: readonly Span[];
  readonly airings: readonly Span[];
  readonly shutting: readonly Span[];
  /** Those of each device control; none where it goes by no reading. */
  readonly devices: readonly Span[];
}

export function indexConditions({ rules, airings, deviceControls }: Automation): ConditionIndex {
  const conditions: Condition[] = [];
  const placed = (some: readonly Condition[]): Span => {
    const from = conditions.length;
    return { from, to: conditions.push(...some) };
  };
  return {
    conditions,
    rules: rules.map((rule) => placed(rule.all)),
    airings: airings.map(({ after }) => placed(after.by === 'readings' ? after.all : [])),
    shutting: airings.map(({ until }) => placed(until)),
    devices: deviceControls.map(({ by }) => placed(by.kind === 'reading' ? [by.on] : [])),
  };
}
