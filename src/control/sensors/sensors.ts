import type { Tariff } from '../../physics/economics/tariff.ts';
import { addNormal } from '../../units/add-normal.ts';
import type { Condition } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { judge } from './conditions.ts';
import { createSensorStates, type SensorState } from './sensor-states.ts';
import { createTrueValues } from './true-values.ts';

/** Readings of everything that conditions ask for, and which of these are met. */
export interface Sensors {
  /** 1 for each condition that is met, in the order given. */
  readonly met: Uint8Array;
  /** The sensor that each condition goes by, in the order given. */
  readonly of: readonly SensorState[];
  /** Once a step, before anything is decided. Allocates nothing. */
  readonly read: () => void;
}

/**
 * A reading is what is so behind a first-order lag, plus bias and noise; it changes when the sensor
 * reports. Noise depends on seed, sensor and time only. The lag starts out settled. Noise is drawn,
 * and conditions are judged, only where a reading may turn one of them.
 */
export function createSensors(
  conditions: readonly Condition[],
  context: ControlContext,
  seed: number,
  tariff?: Tariff,
): Sensors {
  const { moment, home, dt } = context;
  const of = createSensorStates(conditions, home, dt, seed);
  const sensors = [...new Set(of)];
  const look = createTrueValues(sensors, context, tariff);
  const met = new Uint8Array(conditions.length);

  const read = (): void => {
    const { utc, count } = moment;
    look();
    for (let k = 0; k < sensors.length; k++) {
      const sensor = sensors[k]!;
      follow(sensor);
      if (utc < sensor.due) continue;
      sensor.due = utc + sensor.every;
      report(sensor, count, met);
    }
  };
  return { met, of, read };
}

function follow(sensor: SensorState): void {
  const { truth, behind, catchUp } = sensor;
  const lags = catchUp < 1 && Number.isFinite(behind);
  sensor.behind = lags ? behind + catchUp * (truth - behind) : truth;
}

function report(sensor: SensorState, now: number, met: Uint8Array): void {
  const { doubt, calmFrom, calmTo } = sensor;
  const reading = sensor.behind + sensor.bias;
  sensor.reading = reading;
  if (reading - doubt > calmFrom && reading + doubt < calmTo) return;
  if (doubt > 0) addNormal(sensor, sensor.stream, now);
  judge(sensor, met);
}
