import { OPEN_GATE, PLAIN_THERMOSTAT, type Thermostat } from '../../control/automation.ts';
import type { Emitter } from '../../home/home.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { THERMOSTAT } from '../presets/control.ts';
import { FROST_GUARD } from '../presets/heating.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/** How each room's thermostat works; those without an emitter, or switched off, do nothing. */
export function thermostats(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): Thermostat[] {
  const heating = data.heating ?? {};
  return plans.map(({ name, index }) => {
    if (!emitters.some(({ room }) => room === index)) return PLAIN_THERMOSTAT;
    const frost = defaults.number(['heating', 'frost guard'], heating['frost guard'], FROST_GUARD);
    const own = heating.rooms?.[name];
    if (own === 'off') return { ...PLAIN_THERMOSTAT, otherwise: frost, frostGuard: frost };
    const room = typeof own === 'object' ? own : {};
    return thermostat({ ...heating, ...room }, frost, defaults);
  });
}

type Programme = Omit<NonNullable<ScenarioData['heating']>, 'rooms'>;

function thermostat(given: Programme, frost: number, defaults: Defaults): Thermostat {
  const gate = given.gate ?? OPEN_GATE;
  const gated = gate.present !== 'no matter';
  const at = (key: string) => ['heating', key];
  const holdOff = gated
    ? defaults.number(at('hold off'), given['hold off'], THERMOSTAT.holdOff)
    : 0;
  const lockOut = given['window lock-out'] ?? 'never';
  return {
    gate,
    otherwise: given.setback ?? frost,
    holdOff: 60 * holdOff,
    lead: leadOf(given, defaults),
    frostGuard: frost,
    windowDelay: lockOut === 'never' ? null : 60 * lockOut,
    ...sensorOf(given.sensor, defaults),
    proportionalBand: given['proportional band'] ?? 0,
    deadband: given.deadband ?? 0,
  };
}

function leadOf({ lead = 'none', ...given }: Programme, defaults: Defaults): Thermostat['lead'] {
  if (lead === 'none') return { by: 'none' };
  if (lead !== 'learned') return { by: 'fixed', seconds: 60 * lead };
  const path = ['heating', 'longest lead'];
  return {
    by: 'learned',
    most: 60 * defaults.number(path, given['longest lead'], THERMOSTAT.longestLead),
  };
}

function sensorOf(
  given: Programme['sensor'],
  defaults: Defaults,
): Pick<Thermostat, 'bias' | 'valveBias'> {
  const sensor = typeof given === 'string' ? { place: given } : (given ?? {});
  const own = 'at full output' in sensor ? sensor['at full output'] : undefined;
  const bias = 'bias' in sensor ? (sensor.bias ?? 0) : 0;
  if (sensor.place !== 'on the valve') return { bias, valveBias: own ?? 0 };
  const path = ['heating', 'sensor', 'at full output'];
  // A word has no place for the number, so the whole sensor is written instead.
  const listed = typeof given === 'string' ? { path: ['heating', 'sensor'] } : { path };
  if (typeof given === 'string') {
    const words = `{ place: on the valve, at full output: ${THERMOSTAT.valveBias.value} }`;
    defaults.word(listed.path, undefined, words, THERMOSTAT.valveBias.source);
    return { bias, valveBias: THERMOSTAT.valveBias.value };
  }
  return { bias, valveBias: defaults.number(path, own, THERMOSTAT.valveBias) };
}
