import type { Dehumidifier } from '../../../home/devices.ts';
import { COMMON, scaled } from '../../../units/preset.ts';
import { SECONDS_PER_DAY } from '../../../units/time-units.ts';
import type { DeviceOf } from '../../model/device.ts';
import { DEHUMIDIFIER, DRYING_POWER, TESTED_AT, TESTED_SOURCE } from '../../presets/devices.ts';
import type { Defaults } from '../defaults.ts';
import { filling } from './device-context.ts';

/** A dehumidifier by what its label says, and at which test condition. */
export function dehumidifierOf(
  given: DeviceOf<'dehumidifier'>,
  name: string,
  defaults: Defaults,
): Dehumidifier {
  const number = filling(name, defaults);
  const at = (key: string) => ['devices', name, key];
  const type = defaults.word(at('type'), given.type, 'compressor', COMMON);
  const usual = TESTED_AT[type];
  if (given['tested at'] === undefined) {
    defaults.word(at('tested at'), undefined, usual.words, TESTED_SOURCE);
  }
  const tested = given['tested at'] ?? usual;
  const label = number('label', given.label, DEHUMIDIFIER.label[type]);
  const drained = given.tank === 'drained';
  const tank = typeof given.tank === 'number' ? given.tank : undefined;
  return {
    kind: 'dehumidifier',
    type,
    ratedWater: label / SECONDS_PER_DAY,
    ratedPower: number('power', given.power, scaled(DRYING_POWER[type], label)),
    ratedTemperature: tested.temperature,
    ratedHumidity: tested.humidity,
    standby: number('standby', given.standby, DEHUMIDIFIER.standby),
    tank: drained ? Number.POSITIVE_INFINITY : number('tank', tank, DEHUMIDIFIER.tank),
  };
}
