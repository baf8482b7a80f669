import { eerLine } from '../../../home/eer-line.ts';
import type { Cooler, Curve, Emitter } from '../../../home/home.ts';
import { scaled } from '../../../units/preset.ts';
import { SECONDS_PER_HOUR } from '../../../units/time-units.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { COIL, DUCT_EXHAUST, EER, EMITTER_COOLING, UNIT_POWER } from '../../presets/cooling.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';
import { type CooledRoom, type CoolingSource, cooledRooms, coolingSource } from './cooled-rooms.ts';

/** One cooler in every room that is cooled, in the order of the rooms. */
export function coolersOf(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): Cooler[] {
  const source = coolingSource(data, defaults);
  const rooms = cooledRooms(data, plans, emitters, defaults);
  if (source === null || rooms.length === 0) return [];
  const eer = eerOf(source, data.cooling?.eer, defaults);
  return rooms.map((room) => {
    const power = powerOf(source, room, data, defaults);
    const emitter = emitters.find(({ room: index }) => index === room.plan.index);
    return {
      name: `${room.plan.name} ${NAMES[source]}`,
      room: room.plan.index,
      source,
      power,
      eer,
      coil: coilOf(source, power, data, defaults),
      exhaust: source === 'single duct' ? exhaustOf(data, defaults) / SECONDS_PER_HOUR : 0,
      radiantShare: source === 'reversible heat pump' ? (emitter?.radiantShare ?? 0) : 0,
    };
  });
}

function powerOf(
  source: CoolingSource,
  { plan, programme: { power } }: CooledRoom,
  { cooling }: ScenarioData,
  defaults: Defaults,
): number {
  if (source === 'ideal') return Number.POSITIVE_INFINITY;
  if (power !== undefined) return power;
  if (source !== 'reversible heat pump') {
    return defaults.number(['cooling', 'power'], undefined, UNIT_POWER[source]);
  }
  const given = cooling?.['power per area'];
  const perArea = defaults.number(['cooling', 'power per area'], given, EMITTER_COOLING);
  return perArea * plan.area;
}

/** Air meets a coil in units that hang in a room; emitters and an ideal cooler leave its water alone. */
function coilOf(
  source: CoolingSource,
  power: number,
  { cooling }: ScenarioData,
  defaults: Defaults,
): Cooler['coil'] {
  if (source !== 'split' && source !== 'single duct') return null;
  const given = cooling?.coil ?? {};
  const at = (key: string) => ['cooling', 'coil', key];
  const usualFlow = scaled(COIL.airflowPerWatt, power);
  return {
    bypassFactor: defaults.number(at('bypass factor'), given['bypass factor'], COIL.bypassFactor),
    temperature: defaults.number(at('temperature'), given.temperature, COIL.temperature),
    airflow: defaults.number(at('airflow'), given.airflow, usualFlow) / SECONDS_PER_HOUR,
  };
}

function exhaustOf({ cooling }: ScenarioData, defaults: Defaults): number {
  return defaults.number(['cooling', 'exhaust'], cooling?.exhaust, DUCT_EXHAUST);
}

function eerOf(
  source: CoolingSource,
  given: NonNullable<ScenarioData['cooling']>['eer'],
  defaults: Defaults,
): Curve {
  if (typeof given === 'number') return { outdoor: [0], value: [given] };
  if (given !== undefined) {
    return { outdoor: given.map(({ outdoor }) => outdoor), value: given.map(({ eer }) => eer) };
  }
  const usual = EER[source === 'ideal' ? 'split' : source];
  const value = defaults.number(['cooling', 'eer'], undefined, usual);
  return 'share' in usual
    ? eerLine(usual.share, usual.evaporator)
    : { outdoor: [0], value: [value] };
}

const NAMES: Readonly<Record<CoolingSource, string>> = {
  ideal: 'cooling',
  split: 'air conditioner',
  'single duct': 'air conditioner',
  'reversible heat pump': 'cooled emitter',
};
