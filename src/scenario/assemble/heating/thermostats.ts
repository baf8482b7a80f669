import { OPEN_GATE, PLAIN_THERMOSTAT, type Thermostat } from '../../../control/automation.ts';
import type { Emitter } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { THERMOSTAT } from '../../presets/control.ts';
import { FROST_GUARD } from '../../presets/heating.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

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
    const one = { ...heating, ...room };
    if (heating.thermostat === undefined) return thermostat(one, frost, defaults);
    if (heating.thermostat === name) return callingThermostat(one, frost, defaults);
    return plainValve(one, defaults);
  });
}

/** The one thermostat of a home, which switches the heating of all rooms on and off. */
function callingThermostat(given: Programme, frost: number, defaults: Defaults): Thermostat {
  const path = ['heating', 'deadband'];
  const deadband = defaults.number(path, given.deadband, THERMOSTAT.deadband);
  return thermostat({ ...given, deadband }, frost, defaults);
}

/** A valve that opens by the temperature of its room and knows neither clock nor presence. */
function plainValve(given: Programme, defaults: Defaults): Thermostat {
  const path = ['heating', 'proportional band'];
  return {
    ...PLAIN_THERMOSTAT,
    ...sensorOf(given.sensor, defaults),
    proportionalBand: defaults.number(path, given['proportional band'], THERMOSTAT.plainValve),
  };
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
): Pick<Thermostat, 'bias' | 'valveBias' | 'radiantShare'> {
  if (typeof given === 'string') return sensorByWord(given, defaults);
  const at = (key: string) => ['heating', 'sensor', key];
  const share = given?.['radiant share'];
  const own = given?.['at full output'];
  return {
    bias: given?.bias ?? 0,
    radiantShare: defaults.number(at('radiant share'), share, THERMOSTAT.radiantShare),
    valveBias:
      given?.place === 'on the valve'
        ? defaults.number(at('at full output'), own, THERMOSTAT.valveBias)
        : (own ?? 0),
  };
}

/** A word has no place for numbers, so the whole sensor is listed as it could be written. */
function sensorByWord(place: 'remote' | 'on the valve', defaults: Defaults) {
  const { radiantShare, valveBias } = THERMOSTAT;
  const onValve = place === 'on the valve';
  const atFull = onValve ? `, at full output: ${valveBias.value}` : '';
  const words = `{ place: ${place}, radiant share: ${radiantShare.value}${atFull} }`;
  const { source } = onValve ? valveBias : radiantShare;
  defaults.word(['heating', 'sensor'], undefined, words, source);
  return {
    bias: 0,
    radiantShare: radiantShare.value,
    valveBias: onValve ? valveBias.value : 0,
  };
}
