import { toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { ControlContext } from '../control-context.ts';
import type { RuleReport } from '../control-report.ts';
import { createUnheard } from './unheard-messages.ts';

/** Counts what came of each rule. */
export interface RuleTally {
  /** Once a step, before any rule fires: gives late readers of earlier messages their due. */
  readonly step: () => void;
  readonly fired: (rule: number) => void;
  /** The rule is active in this step. */
  readonly active: (rule: number) => void;
  /** Somebody did what the rule's latest message asked for; counted once a message. */
  readonly actedOn: (rule: number) => void;
  readonly missed: (rule: number) => void;
  /** A message was held back, once until it is told or no longer so. */
  readonly heldBack: (rule: number) => void;
  readonly startCounting: () => void;
  readonly report: (
    rules: readonly Pick<RuleReport, 'name' | 'series' | 'tells'>[],
  ) => RuleReport[];
}

/** A message counts as one that could be acted on if somebody at home is awake within the hour after it. */
export function createRuleTally(
  rules: number,
  { moment, presence, dt, household: { clock } }: ControlContext,
): RuleTally {
  const counts = Array.from({ length: rules }, noCounts);
  const byHour = Array.from({ length: rules }, () => new Int32Array(24));
  const heardByHour = Array.from({ length: rules }, () => new Int32Array(24));
  const unheard = createUnheard(rules, Math.ceil(SECONDS_PER_HOUR / dt));
  const last = new Float64Array(rules).fill(Number.NEGATIVE_INFINITY);
  const acted = new Uint8Array(rules);

  const heard = (r: number, hour: number): void => {
    counts[r]!.couldAct++;
    addTo(heardByHour[r]!, hour);
  };

  const step = (): void => {
    unheard.forget(moment.count);
    if (presence.awakeHome) unheard.take(heard);
  };

  const fired = (r: number): void => {
    const count = counts[r]!;
    count.fired++;
    const hour = Math.floor((toLocal(clock, moment.utc) % SECONDS_PER_DAY) / SECONDS_PER_HOUR);
    addTo(byHour[r]!, hour);
    if (presence.someoneHome) count.someoneHome++;
    if (moment.utc - last[r]! < SECONDS_PER_HOUR) count.duplicates++;
    last[r] = moment.utc;
    acted[r] = 0;
    if (presence.awakeHome) {
      count.someoneAwake++;
      heard(r, hour);
    } else unheard.add(r, moment.count, hour);
  };

  const active = (r: number): void => {
    counts[r]!.activeHours += dt / SECONDS_PER_HOUR;
  };

  const actedOn = (r: number): void => {
    if (acted[r] === 0) counts[r]!.actedOn++;
    acted[r] = 1;
  };

  const missed = (r: number): void => {
    counts[r]!.missed++;
  };

  const heldBack = (r: number): void => {
    counts[r]!.heldBack++;
  };

  const startCounting = (): void => {
    for (const count of counts) Object.assign(count, noCounts());
    for (const counted of [...byHour, ...heardByHour]) counted.fill(0);
    unheard.clear();
    acted.fill(1);
  };

  const report = (known: readonly Pick<RuleReport, 'name' | 'series' | 'tells'>[]): RuleReport[] =>
    known.map((rule, r) => ({
      ...{ ...rule, ...counts[r]! },
      byHour: Array.from(byHour[r]!),
      heardByHour: Array.from(heardByHour[r]!),
    }));

  return { step, fired, active, actedOn, missed, heldBack, startCounting, report };
}

function addTo(hours: Int32Array, hour: number): void {
  hours[hour] = hours[hour]! + 1;
}

function noCounts() {
  return {
    fired: 0,
    someoneHome: 0,
    someoneAwake: 0,
    couldAct: 0,
    actedOn: 0,
    duplicates: 0,
    activeHours: 0,
    missed: 0,
    heldBack: 0,
  };
}
