import type { Device, DeviceAction } from '../../../home/devices.ts';
import { sourcePerSecond } from '../../../species/concentration-unit.ts';
import { supplyFilterOf } from '../../../species/supply-filter.ts';
import { preset, scaled } from '../../../units/preset.ts';
import type { DeviceData, DeviceOf } from '../../model/device.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { BALANCED, EXTRACT_FAN, HEATER, HUMIDIFIER, PURIFIER } from '../../presets/devices.ts';
import type { CarriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import { dehumidifierOf } from './dehumidifier.ts';
import { type DeviceContext, filling } from './device-context.ts';
import { stoveOf } from './stove.ts';

/** What devices do when they run, in the order of the file. */
export function devicesOf(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  species: readonly CarriedSpecies[],
  defaults: Defaults,
): Device[] {
  return Object.entries(data.devices ?? {}).map(([name, given]) => {
    const room = roomOf(given, plans);
    const context = { plan: plans[room]!, plans, species, number: filling(name, defaults) };
    const does = actionOf(given, context, name, defaults);
    return { name, room, does, ...givenOff(name, species) };
  });
}

/** What the scenario's own species say of a device by its name. */
function givenOff(
  device: string,
  species: readonly CarriedSpecies[],
): Pick<Device, 'gives'> | Record<string, never> {
  const hourly = species.map(({ own }) => {
    const amounts = own?.sources?.devices ?? {};
    return Object.hasOwn(amounts, device) ? amounts[device]! : 0;
  });
  if (hourly.every((amount) => amount === 0)) return {};
  return { gives: hourly.map((amount, s) => sourcePerSecond(amount, species[s]!.unit)) };
}

/** Where it stands; the unit of a ventilation of several rooms hangs in the first it extracts from. */
function roomOf(given: DeviceData, plans: readonly RoomPlan[]): number {
  const name =
    given.kind === 'balanced ventilation' ? (Object.keys(given.extracts)[0] ?? '') : given.room;
  return Math.max(0, roomCalled(name, plans));
}

function actionOf(
  given: DeviceData,
  context: DeviceContext,
  name: string,
  defaults: Defaults,
): DeviceAction {
  const { number, plan } = context;
  switch (given.kind) {
    case 'dehumidifier':
      return dehumidifierOf(given, name, defaults);
    case 'stove':
      return stoveOf(given, context);
    case 'humidifier': {
      const power = given.boils ? HUMIDIFIER.power.boils : HUMIDIFIER.power.cold;
      return {
        kind: 'humidifier',
        water: number('water', given.water, HUMIDIFIER.water) / 1000 / 3600,
        power: number('power', given.power, power),
      };
    }
    case 'extract fan': {
      const likely =
        fanRuns(given) === 'always' ? 'continuous' : plan.use === 'kitchen' ? 'kitchen' : 'other';
      return {
        kind: 'extract fan',
        flow: number('flow', given.flow, EXTRACT_FAN.flow[likely]) / 3600,
        power: number('power', given.power, EXTRACT_FAN.power),
      };
    }
    case 'balanced ventilation':
      return balanced(given, context, name, defaults);
    case 'purifier': {
      const clean = number('clean air', given['clean air'], PURIFIER.cleanAir);
      return {
        kind: 'purifier',
        cleanAir: context.species.map(({ name: kind, filter, own }) => {
          if (own !== undefined) {
            const path = ['air', 'own species', kind, 'filter share'];
            return (clean * defaults.number(path, own['filter share'], PASSES)) / 3600;
          }
          if (filter?.by !== 'share') return filter === undefined ? 0 : clean / 3600;
          return (clean * number(filter.key, given[filter.key], filter.usual)) / 3600;
        }),
        power: number('power', given.power, scaled(PURIFIER.power, clean)),
      };
    }
    case 'heater':
      return {
        kind: 'heater',
        power: number('power', given.power, HEATER.power),
        radiantShare: number('radiant share', given['radiant share'], HEATER.radiantShare),
      };
  }
}

/** What makes a fan run, where nobody says: activities or a humidity that it names, else it never stops. */
export function fanRuns(given: DeviceOf<'extract fan'>): NonNullable<typeof given.runs> {
  if (given.runs !== undefined) return given.runs;
  if (given.with !== undefined) return 'with activities';
  return given.target === undefined ? 'always' : 'by humidity';
}

function balanced(
  given: DeviceOf<'balanced ventilation'>,
  { number, plans, species }: DeviceContext,
  name: string,
  defaults: Defaults,
): DeviceAction {
  const flows = (by: Readonly<Record<string, number>>) =>
    Object.entries(by).map(([name, flow]) => ({
      room: roomCalled(name, plans),
      flow: flow / 3600,
    }));
  const supplied = Object.values(given.supplies).reduce((sum, flow) => sum + flow, 0);
  const recovery = BALANCED.moistureRecovery;
  const at = ['devices', name, 'filter'];
  const filter = supplyFilterOf(defaults.word(at, given.filter, BALANCED.filter, KEPT_CLEAN))!;
  return {
    kind: 'balanced ventilation',
    supplies: flows(given.supplies),
    extracts: flows(given.extracts),
    heatRecovery: number('heat recovery', given['heat recovery'], BALANCED.heatRecovery),
    moistureRecovery: number('moisture recovery', given['moisture recovery'], recovery),
    held: species.map(({ name: kind, supplyFilter, own }) => {
      if (filter.group === 'none') return 0;
      if (own !== undefined) {
        const path = ['air', 'own species', kind, 'supply filter share'];
        return defaults.number(path, own['supply filter share'], PASSES);
      }
      if (supplyFilter === undefined) return 0;
      const { key, held } = supplyFilter;
      return number(key, given[key], held(filter));
    }),
    power: number('power', given.power, scaled(BALANCED.power, supplied)),
  };
}

const KEPT_CLEAN =
  'common practice: units have a coarse filter at least, which keeps the exchanger clean';

const PASSES = preset(0, 0, 1, 'passes filters: nothing is known of it but what the scenario says');
