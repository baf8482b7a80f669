import { type Condition, PERFECT_SENSOR, type Sensor } from '../../../control/automation.ts';
import { EXACT } from '../../../species/own-species.ts';
import type { Preset } from '../../../units/preset.ts';
import type { ConditionData } from '../../model/condition.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { DERIVED, type Measured, SENSORS } from '../../presets/sensors.ts';
import type { Defaults } from '../defaults.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';

/** Turns conditions of the file into those of control, each with the sensor it goes by. */
export type ConditionMaker = (given: ConditionData) => Condition;

export function conditionMaker(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): ConditionMaker {
  return ({ quantity, room, is, value, clear }) => ({
    quantity,
    room: room === null ? -1 : roomCalled(room, plans),
    is,
    value,
    clear,
    sensor: sensorFor(quantity, room, data, defaults),
  });
}

function sensorFor(
  quantity: Condition['quantity'],
  room: string | null,
  data: ScenarioData,
  defaults: Defaults,
): Sensor {
  const sensor = (which: Measured) => readingSensor(which, room, data, defaults);
  switch (quantity) {
    case 'window':
    case 'presence':
    case 'hour':
    case 'hour since noon':
    case 'electricity price':
      return PERFECT_SENSOR;
    case 'relative humidity':
      return sensor('humidity');
    case 'absolute humidity':
    case 'humidity above outdoors':
      return derived(sensor('temperature'), sensor('humidity'), DERIVED.absolute);
    case 'dew point':
      return derived(sensor('temperature'), sensor('humidity'), DERIVED.dewPoint);
    default:
      return sensor(quantity);
  }
}

/** A room's own sensor, else that of all rooms; the weather outdoors is taken as it is. */
function readingSensor(
  which: Measured,
  room: string | null,
  data: ScenarioData,
  defaults: Defaults,
): Sensor {
  const all = data.sensors?.[which];
  const own = room === null ? undefined : data.sensors?.rooms?.[room]?.[which];
  if (room === 'outdoors' && own === undefined) return PERFECT_SENSOR;
  const common = all === 'none' ? undefined : all;
  const here = own === 'none' ? undefined : own;
  const presets = SENSORS[which] ?? EXACT;
  const number = (key: keyof typeof presets, preset: Preset) =>
    here?.[key] ?? defaults.number(['sensors', which, key], common?.[key], preset);
  return {
    bias: number('bias', presets.bias),
    noise: number('noise', presets.noise),
    step: number('step', presets.step),
    lag: 60 * number('lag', presets.lag),
    every: 60 * number('every', presets.every),
  };
}

/** What is worked out from temperature and humidity errs by both, as near 20 °C and 50 %. */
function derived(
  temperature: Sensor,
  humidity: Sensor,
  { perHumidity, perKelvin, step }: { perHumidity: number; perKelvin: number; step: number },
): Sensor {
  return {
    bias: perHumidity * humidity.bias + perKelvin * temperature.bias,
    noise: Math.hypot(perHumidity * humidity.noise, perKelvin * temperature.noise),
    step: humidity.step === 0 ? 0 : step,
    lag: Math.max(temperature.lag, humidity.lag),
    every: Math.max(temperature.every, humidity.every),
  };
}
