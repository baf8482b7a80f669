import type { Automation, Condition } from '../automation.ts';

/** Every condition that an automation asks about, in one list, and who asks. */
export interface ConditionIndex {
  readonly conditions: readonly Condition[];
  /** Numbers in that list, per rule and per airing habit. */
  readonly rules: readonly (readonly number[])[];
  readonly airings: readonly (readonly number[])[];
  readonly shutting: readonly (readonly number[])[];
  /** Condition numbers of each device control; empty where it goes by no reading. */
  readonly devices: readonly (readonly number[])[];
}

export function indexConditions({ rules, airings, deviceControls }: Automation): ConditionIndex {
  const conditions: Condition[] = [];
  const numbers = (some: readonly Condition[]): number[] =>
    some.map((condition) => conditions.push(condition) - 1);
  return {
    conditions,
    rules: rules.map((rule) => numbers(rule.all)),
    airings: airings.map(({ after }) => numbers(after.by === 'readings' ? after.all : [])),
    shutting: airings.map(({ until }) => numbers(until)),
    devices: deviceControls.map(({ by }) => numbers(by.kind === 'reading' ? [by.on] : [])),
  };
}
