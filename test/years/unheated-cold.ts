import { createDayInputs } from '../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../src/control/fill-day-inputs.ts';
import type { Observer } from '../../src/engine/record/trace.ts';
import { demoPlan, demoRun } from './demo-run.ts';

/** How cold people had it on days on which their home was not heated. */
export interface UnheatedCold {
  /** Days of the year on which radiators gave a kilowatt-hour or more. */
  readonly heatedDays: number;
  /** Useful heat of the year. [kWh] */
  readonly heat: number;
  /**
   * Hours with somebody awake in a room more than 1 K under its programme, summed over the rooms, on
   * the other days: of the three summer months, and of the rest. [h]
   */
  readonly summer: number;
  readonly between: number;
}

/** A demonstration home as it is lived in, with settings laid on it as on the command line. */
export function unheatedCold(file: string, set: readonly string[] = []): UnheatedCold {
  const { home, household, dt } = demoPlan(file, 'as-lived', set);
  const rooms = home.rooms.length;
  const day = createDayInputs(household, rooms, home.species.length, SECONDS_PER_DAY / dt);
  const sums = { heatedDays: 0, summer: 0, between: 0 };
  const watch: Observer = ({ start, steps, room }) => {
    if (room.heating.subarray(0, steps * rooms).reduce((sum, w) => sum + w * dt, 0) >= KWH) {
      sums.heatedDays++;
      return;
    }
    fillDayInputs(day, household, start, dt, steps);
    const season = SUMMER.includes(new Date(start * 1000).getUTCMonth()) ? 'summer' : 'between';
    for (let k = 0; k < steps * rooms; k++) {
      const under = day.setpoints[k]! - room.operativeTemperature[k]!;
      if (under > 1) sums[season] += (Math.min(1, day.awake[k]!) * dt) / 3600;
    }
  };
  const { measures } = demoRun(file, 'as-lived', set, [watch]);
  return { ...sums, heat: measures.heating.useful_kwh };
}

const SUMMER = [5, 6, 7]; // June to August
const SECONDS_PER_DAY = 86_400;
const KWH = 3.6e6; // [J]
