import * as z from 'zod';
import { FILTER_RATED as RATED } from '../../species/species-lists.ts';
import {
  BALANCED,
  DEHUMIDIFIER,
  EXTRACT_FAN,
  HEATER,
  HUMIDIFIER,
  PURIFIER,
  STOVE,
} from '../presets/devices.ts';
import { activityNames } from './airing.ts';
import { hours } from './clock-fields.ts';
import {
  control,
  deadband,
  drierBy,
  filterClass,
  flow,
  minutes,
  room,
  runs,
  share,
  target,
  testCondition,
  watts,
} from './device-parts.ts';
import { choice, either, named, plainNumber, quantity, section } from './fields.ts';
import { PURIFIER_RUNS } from './purifier-reads.ts';
import { filterShares, refuellingSources, supplyFilterShares } from './species-fields.ts';

const { label: LABEL } = DEHUMIDIFIER;
const { flow: FLOW } = EXTRACT_FAN;

const dehumidifier = section(
  {
    kind: z.literal('dehumidifier').describe('A dehumidifier, which takes water out of the air'),
    room,
    type: choice(['compressor', 'desiccant'], 'How the dehumidifier dries air', {
      usual: 'compressor',
    }).optional(),
    label: quantity(
      'L/day',
      { above: 0, max: 200 },
      'Water that the dehumidifier removes at the test condition, by its label',
      {
        eg: '12 L/day',
        otherwise: `${LABEL.compressor.value} for a compressor, ${LABEL.desiccant.value} for a desiccant`,
      },
    ).optional(),
    'tested at': testCondition.optional(),
    power: watts('Power of the dehumidifier while drying at the test condition', {
      eg: '200 W',
      otherwise: 'by its label',
    }).optional(),
    standby: watts(
      'Power of the dehumidifier while it waits',
      { usual: DEHUMIDIFIER.standby },
      100,
    ).optional(),
    tank: either(
      [
        choice(['drained'], 'The water drains away'),
        quantity('L', { above: 0, max: 100 }, 'Water that the tank holds', { eg: '2 L' }),
      ],
      'drained, or how much it holds in L',
      'Where the water of the dehumidifier goes: a tank, or drained',
      { usual: DEHUMIDIFIER.tank },
    ).optional(),
    runs: runs(['by humidity', 'always', 'by rules'], { usual: 'by humidity' }),
    target: target(
      'Relative humidity that the dehumidifier keeps the room under',
      DEHUMIDIFIER.target,
    ),
    deadband: deadband('%', 30, { usual: DEHUMIDIFIER.deadband }),
    ...control,
  },
  'A dehumidifier',
);

const humidifier = section(
  {
    kind: z.literal('humidifier').describe('A humidifier, which puts water into the air'),
    room,
    water: quantity(
      'mL/h',
      { above: 0, max: 5000 },
      'Water that the humidifier gives to the room',
      { usual: HUMIDIFIER.water },
    ).optional(),
    power: watts('Power of the humidifier', {
      eg: '20 W',
      otherwise: `${HUMIDIFIER.power.cold.value}, or ${HUMIDIFIER.power.boils.value} where it boils`,
    }).optional(),
    boils: z
      .boolean({ error: () => 'true or false' })
      .meta({ description: 'Whether the humidifier boils the water', eg: true, usual: false })
      .optional(),
    runs: runs(['by humidity', 'always', 'by rules'], { usual: 'by humidity' }),
    target: target('Relative humidity that the humidifier keeps the room over', HUMIDIFIER.target),
    deadband: deadband('%', 30, { usual: HUMIDIFIER.deadband }),
    ...control,
  },
  'A humidifier',
);

const extractFan = section(
  {
    kind: z.literal('extract fan').describe('An extract fan, which blows room air outdoors'),
    room,
    flow: flow('Air that the fan blows outdoors', {
      eg: 54,
      otherwise: `${FLOW.kitchen.value} in a kitchen, ${FLOW.other.value} elsewhere, ${FLOW.continuous.value} where it always runs`,
    }).optional(),
    power: watts('Power of the fan', { usual: EXTRACT_FAN.power }, 1000).optional(),
    runs: runs(['always', 'with activities', 'by humidity', 'by rules'], {
      otherwise: 'with the activities or by the target that are given, else always',
    }),
    with: activityNames('Activities that the fan runs with, by their name or kind', {
      eg: ['shower', 'bath'],
      otherwise: 'none',
    }).optional(),
    'run on': minutes('How long the fan runs on after the activities', {
      usual: EXTRACT_FAN.runOn,
    }).optional(),
    target: target('Relative humidity above which the fan runs', EXTRACT_FAN.target),
    deadband: deadband('%', 30, { usual: EXTRACT_FAN.deadband }),
    'drier by': drierBy,
    ...control,
  },
  'An extract fan, which runs with activities, by humidity, or all the time',
);

const flows = (says: string) =>
  named(flow('Air of the room', { eg: 30 }), 'a mapping from room names to flows', says, {
    eg: { bedroom: 30 },
  });

const balancedVentilation = section(
  {
    kind: z
      .literal('balanced ventilation')
      .describe('Balanced ventilation, which supplies and extracts air and recovers heat'),
    supplies: flows('Fresh air that each room is supplied with, by its name'),
    extracts: flows(
      'Used air that is extracted from each room, by its name, in sum as much as is supplied',
    ),
    'heat recovery': share('Share of the temperature difference that is handed to the supply air', {
      usual: BALANCED.heatRecovery,
    }).optional(),
    'moisture recovery': share(
      'Share of the difference in humidity ratio that is handed to the supply air',
      { usual: BALANCED.moistureRecovery },
    ).optional(),
    filter: filterClass('Class of the filter in the supply air, by ISO 16890', {
      eg: 'ePM1 50 %',
      usual: BALANCED.filter,
    }).optional(),
    ...supplyFilterShares(),
    power: watts('Power of both fans', {
      eg: '40 W',
      otherwise: `${BALANCED.power.value} for each m3/h that is supplied`,
    }).optional(),
    runs: runs(['always', 'by rules'], { usual: 'always' }),
    ...control,
  },
  'Balanced ventilation',
);

const purifier = section(
  {
    kind: z.literal('purifier').describe('An air purifier, which filters room air'),
    room,
    'clean air': flow(`Clean-air delivery rate for ${RATED.words.toLowerCase()}`, {
      usual: PURIFIER.cleanAir,
    }).optional(),
    ...filterShares(),
    power: watts(
      'Power of the purifier',
      { eg: '30 W', otherwise: `${PURIFIER.power.value} for each m3/h of clean air` },
      1000,
    ).optional(),
    runs: runs(PURIFIER_RUNS, { usual: 'always' }),
    target: quantity(
      RATED.unit,
      { min: 0, max: RATED.limits.level },
      'Level above which the purifier runs, of what it runs by',
      { eg: PURIFIER.target.value, otherwise: `${PURIFIER.target.value} by particles` },
    ).optional(),
    deadband: deadband(RATED.unit, RATED.limits.level / 2, {
      eg: PURIFIER.deadband.value,
      otherwise: `${PURIFIER.deadband.value} by particles`,
    }),
    ...control,
  },
  'An air purifier',
);

const heater = section(
  {
    kind: z.literal('heater').describe('A plug-in electric heater'),
    room,
    power: watts('Power of the heater', { usual: HEATER.power }).optional(),
    'radiant share': share('Share of the heat of the heater that goes to surfaces by radiation', {
      usual: HEATER.radiantShare,
    }).optional(),
    runs: runs(['by temperature', 'always', 'by rules'], { usual: 'by temperature' }),
    target: quantity('°C', { min: 0, max: 35 }, 'Temperature that the heater keeps', {
      usual: HEATER.target,
    }).optional(),
    deadband: deadband('K', 10, { usual: HEATER.deadband }),
    ...control,
  },
  'A plug-in heater',
);

const stove = section(
  {
    kind: z.literal('stove').describe('A stove, which burns logs'),
    room,
    burns: hours('When there is a fire in the stove', {
      eg: '18:00-22:00',
      otherwise: 'evenings from October to April',
    }).optional(),
    batch: quantity('kg', { above: 0, max: 30 }, 'Wood that is laid on each time', {
      usual: STOVE.batch,
    }).optional(),
    refuelling: quantity('min', { min: 5, max: 600 }, 'Time from one batch of wood to the next', {
      usual: STOVE.refuelling,
    }).optional(),
    'wood energy': plainNumber(
      { above: 0, max: 6 },
      'Energy in wood as bought, net calorific value',
      { unit: 'kWh/kg', usual: STOVE.energy },
    ).optional(),
    efficiency: quantity(
      '-',
      { above: 0, max: 1 },
      'Heat that the stove gives to the room over the energy in the wood',
      { usual: STOVE.efficiency },
    ).optional(),
    'radiant share': share('Share of the heat of the stove that goes to surfaces by radiation', {
      usual: STOVE.radiantShare,
    }).optional(),
    lag: minutes('Time constant of the body of the stove warming up', {
      usual: STOVE.lag,
    }).optional(),
    air: choice(['room', 'outdoors'], 'Where the air of the fire comes from', {
      usual: 'room',
    }).optional(),
    'room air': flow('Air that the fire draws from the room while it burns', {
      usual: STOVE.roomAir,
    }).optional(),
    ...refuellingSources(),
    gate: control.gate,
  },
  'A wood stove',
);

const DEVICE_KINDS = [
  'dehumidifier',
  'humidifier',
  'extract fan',
  'balanced ventilation',
  'purifier',
  'heater',
  'stove',
] as const;

const deviceModel = z
  .discriminatedUnion(
    'kind',
    [dehumidifier, humidifier, extractFan, balancedVentilation, purifier, heater, stove],
    { error: () => `one of: ${DEVICE_KINDS.join(', ')}` },
  )
  .meta({ description: 'One device', eg: { kind: 'dehumidifier', room: 'bedroom' } });

export const devicesModel = named(
  deviceModel,
  'a mapping from names of devices to devices',
  'Devices, each under its name',
  { eg: { drier: { kind: 'dehumidifier', room: 'bedroom', target: '55 %' } }, otherwise: 'none' },
);

export type DeviceData = z.output<typeof deviceModel>;
export type DeviceOf<K extends DeviceData['kind']> = Extract<DeviceData, { kind: K }>;
