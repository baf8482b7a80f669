import type { Emitter, Fuel, HeatSource } from '../../../home/home.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import {
  BOILER_EFFICIENCY,
  COP,
  DISTRICT_EFFICIENCY,
  ELECTRIC_HEATER,
  HEATER_LAG,
  HEATER_RADIANT,
  RADIATOR,
  RADIATOR_EXCESS,
  RADIATOR_EXPONENT,
  RADIATOR_LAG,
  RADIATOR_RADIANT,
  SOURCE_POWER,
  WATER,
} from '../../presets/heating.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';
import { copAlong, usualCop } from './heat-curves.ts';

export interface HeatPlant {
  readonly emitters: readonly Emitter[];
  readonly sources: readonly HeatSource[];
}

/** The heat source and an emitter in every room that is heated. */
export function heatPlant(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): HeatPlant {
  const heating = data.heating ?? {};
  const kind = defaults.word(['heating', 'source'], heating.source, 'boiler', COMMON);
  if (kind === 'none') return { emitters: [], sources: [] };
  const emitters = plans.flatMap((plan) =>
    emitter(data, plan, kind === 'direct electric', defaults),
  );
  if (emitters.length === 0) return { emitters, sources: [] };
  const rated = emitters.reduce((sum, { ratedPower }) => sum + ratedPower, 0);
  const dry = kind === 'direct electric';
  const water = dry ? null : waterOf(kind, heating['water temperature'], defaults);
  const source: HeatSource = {
    name: kind,
    fuel: fuelOf(kind, data, defaults),
    ...(water === null ? { waterTemperature: Number.NaN } : water),
    ...powerOf(kind, heating.power, rated, defaults),
    ...(heating.backup !== undefined && { backup: heating.backup }),
    ...(heating.sharing !== undefined && { sharing: heating.sharing }),
    conversion: conversion(kind, data, water, defaults),
  };
  return { emitters, sources: [source] };
}

type Heating = NonNullable<ScenarioData['heating']>;
type Water = Pick<HeatSource, 'waterTemperature' | 'waterCurve'>;

/** Water at one temperature, or led by the weather; the hottest then stands for it where one number does. */
function waterOf(
  kind: Exclude<Kind, 'direct electric'>,
  given: Heating['water temperature'],
  defaults: Defaults,
): Water {
  if (!Array.isArray(given)) {
    return {
      waterTemperature: defaults.number(['heating', 'water temperature'], given, WATER[kind]),
    };
  }
  const value = given.map(({ water }) => water);
  const waterCurve = { outdoor: given.map(({ outdoor }) => outdoor), value };
  return { waterTemperature: Math.max(...value), waterCurve };
}

function powerOf(
  kind: Kind,
  given: Heating['power'],
  rated: number,
  defaults: Defaults,
): Pick<HeatSource, 'power' | 'powerCurve'> {
  if (Array.isArray(given)) {
    const value = given.map(({ power }) => power);
    const powerCurve = { outdoor: given.map(({ outdoor }) => outdoor), value };
    return { power: Math.max(...value), powerCurve };
  }
  if (kind === 'direct electric') return { power: given ?? rated };
  return { power: defaults.number(['heating', 'power'], given, SOURCE_POWER[kind]) };
}

type Kind = 'boiler' | 'direct electric' | 'heat pump' | 'district heat';

function fuelOf(kind: Kind, data: ScenarioData, defaults: Defaults): Fuel {
  if (kind === 'district heat') return 'district heat';
  if (kind !== 'boiler') return 'electricity';
  return defaults.word(['heating', 'fuel'], data.heating?.fuel, 'gas', COMMON);
}

function conversion(
  kind: Kind,
  data: ScenarioData,
  water: Water | null,
  defaults: Defaults,
): HeatSource['conversion'] {
  const { efficiency, cop } = data.heating ?? {};
  const at = ['heating', 'efficiency'];
  if (kind === 'direct electric') return { by: 'efficiency', efficiency: efficiency ?? 1 };
  if (kind === 'boiler') {
    return { by: 'efficiency', efficiency: defaults.number(at, efficiency, BOILER_EFFICIENCY) };
  }
  if (kind === 'district heat') {
    return { by: 'efficiency', efficiency: defaults.number(at, efficiency, DISTRICT_EFFICIENCY) };
  }
  if (typeof cop === 'number') return { by: 'cop', outdoor: [0], cop: [cop] };
  const level = { outdoor: [0], value: [water?.waterTemperature ?? WATER['heat pump'].value] };
  const led = water?.waterCurve ?? level;
  if (cop === undefined) defaults.number(['heating', 'cop'], undefined, COP);
  const curve = cop === undefined ? usualCop(led, WATER['heat pump'].value) : copAlong(cop, led);
  return { by: 'cop', outdoor: curve.outdoor, cop: curve.value };
}

function emitter(data: ScenarioData, plan: RoomPlan, dry: boolean, defaults: Defaults): Emitter[] {
  const given = plan.data.emitter;
  if (given === 'none' || (given === undefined && plan.use === 'storage')) return [];
  const own = given ?? {};
  const all = data.heating?.emitters ?? {};
  const common = <K extends keyof typeof all>(key: K, preset: Parameters<Defaults['number']>[2]) =>
    defaults.number(['heating', 'emitters', key], all[key], preset);
  const perArea = () => common('power per area', dry ? ELECTRIC_HEATER : RADIATOR);
  const excess = dry ? (own.excess ?? 0) : (own.excess ?? common('excess', RADIATOR_EXCESS));
  return [
    {
      name: `${plan.name} ${dry ? 'heater' : 'radiator'}`,
      room: plan.index,
      source: 0,
      ratedPower: own.power ?? Math.round(perArea() * plan.area),
      ratedExcess: excess,
      exponent: excess === 0 ? 1 : (own.exponent ?? common('exponent', RADIATOR_EXPONENT)),
      radiantShare:
        own['radiant share'] ?? common('radiant share', dry ? HEATER_RADIANT : RADIATOR_RADIANT),
      lag: 60 * (own.lag ?? common('lag', dry ? HEATER_LAG : RADIATOR_LAG)),
    },
  ];
}
