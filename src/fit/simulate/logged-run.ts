import type { HeldSeries, ImposedSeries } from '../../engine/imposed/imposed.ts';
import { simulate } from '../../engine/simulate.ts';
import type { Device } from '../../home/devices.ts';
import type { Home } from '../../home/home.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Weather } from '../../weather/weather.ts';
import { createHourlyColumns, type HourlyColumns } from './hourly-columns.ts';

/** A run of a home beside its log, as plain data. */
export interface LoggedRun {
  /** First instant, on the hour. [s UTC] */
  readonly start: number;
  readonly hours: number;
  /** Days before the start in which stores settle at the first held values. */
  readonly spinUpDays: number;
  /** Series in place of the model's own, by room. */
  readonly imposed: Readonly<Record<string, ImposedSeries>>;
  /** Rooms held at the log until an instant, and then let go; null for none. */
  readonly held: {
    /** [s UTC] */
    readonly until: number;
    readonly rooms: Readonly<Record<string, HeldSeries>>;
  } | null;
  /** Power that devices drew, one value a control step, by their names. [W] */
  readonly devicePower: Readonly<Record<string, Float64Array>>;
  /** Rooms whose heat was logged and is imposed, so that their own heaters stay off. */
  readonly metered: readonly string[];
}

/**
 * Simulate a prepared plan beside a log: rooms held, heat imposed as the run says.
 *
 * @returns hourly means of every room
 * @throws InputProblems for series that do not fit
 */
export function simulateLogged(
  plan: PreparedPlan,
  weather: Weather,
  run: LoggedRun,
): HourlyColumns {
  const { start, hours, spinUpDays, imposed, held, devicePower, metered } = run;
  const home = withoutHeaters(plan.home, metered, Object.keys(devicePower));
  const columns = createHourlyColumns(home.rooms.length, home.species.length, hours);
  simulate(
    {
      ...{ home, household: plan.household, automation: plan.automation, weather, dt: plan.dt },
      ...{ start, hours, spinUpDays, imposed, devicePower },
      ...(held !== null && { heldStart: held }),
    },
    [columns.observe],
  );
  return columns.result();
}

/** A home whose emitters and heaters in some rooms give nothing, but for devices that were logged themselves. */
function withoutHeaters(home: Home, rooms: readonly string[], logged: readonly string[]): Home {
  if (rooms.length === 0) return home;
  const off = new Set(home.rooms.flatMap(({ name }, i) => (rooms.includes(name) ? [i] : [])));
  const emitters = home.emitters.map((emitter) =>
    off.has(emitter.room) ? { ...emitter, ratedPower: 0 } : emitter,
  );
  const devices = home.devices.map((device): Device => {
    const { name, room, does } = device;
    if (does.kind !== 'heater' || !off.has(room) || logged.includes(name)) return device;
    return { ...device, does: { ...does, power: 0 } };
  });
  return { ...home, emitters, devices };
}
