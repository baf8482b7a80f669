import type { Observer } from '../../engine/record/trace.ts';

/** Hourly means of a run, one array a room. */
export interface HourlyColumns {
  /** [°C] */
  readonly temperature: readonly Float64Array[];
  /** [%] */
  readonly humidity: readonly Float64Array[];
  /** Heat of emitters, and that which the air took to stay at an imposed temperature. [W] */
  readonly heating: readonly Float64Array[];
  /** By species, then by room. [species unit] */
  readonly species: readonly (readonly Float64Array[])[];
}

/** Keeps hourly means of a run. */
export function createHourlyColumns(rooms: number, species: number, hours: number) {
  const arrays = (): Float64Array[] => Array.from({ length: rooms }, () => new Float64Array(hours));
  const result: HourlyColumns = {
    temperature: arrays(),
    humidity: arrays(),
    heating: arrays(),
    species: Array.from({ length: species }, arrays),
  };
  const observe: Observer = ({ firstStep, steps, dt, room }) => {
    const share = dt / 3600;
    for (let s = 0; s < steps; s++) {
      const hour = Math.floor((firstStep + s) * share + ROUNDING);
      for (let i = 0; i < rooms; i++) {
        const k = s * rooms + i;
        add(result.temperature[i]!, hour, room.airTemperature[k]! * share);
        add(result.humidity[i]!, hour, room.relativeHumidity[k]! * share);
        add(result.heating[i]!, hour, (room.heating[k]! + room.heldHeat[k]!) * share);
        for (let q = 0; q < species; q++) {
          add(result.species[q]![i]!, hour, room.species[q]![k]! * share);
        }
      }
    }
  };
  return { observe, result: () => result };
}

function add(into: Float64Array, hour: number, amount: number): void {
  into[hour] = into[hour]! + amount;
}

const ROUNDING = 1e-9;
