import * as z from 'zod';
import { FILTER_RATED as RATED } from '../../species/species-lists.ts';
import { activityNames } from './airing.ts';
import { hours } from './clock-fields.ts';
import {
  control,
  deadband,
  drierBy,
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
import { filterShares, refuellingSources } from './species-fields.ts';

const dehumidifier = section(
  {
    kind: z.literal('dehumidifier').describe('Takes water out of the air'),
    room,
    type: choice(['compressor', 'desiccant'], 'How it dries').optional(),
    label: quantity(
      'L/day',
      { above: 0, max: 200 },
      'Water removed at the test condition, by the label',
    ).optional(),
    'tested at': testCondition.optional(),
    power: watts('Electricity while drying at the test condition').optional(),
    standby: watts('Electricity while it waits', 100).optional(),
    tank: either(
      [
        choice(['drained'], 'The water drains away'),
        quantity('L', { above: 0, max: 100 }, 'Capacity of the tank'),
      ],
      'drained, or how much it holds in L',
      'What happens to the water',
    ).optional(),
    runs: runs(['by humidity', 'always', 'by rules']),
    target: target('Relative humidity it keeps'),
    deadband: deadband('%', 30),
    ...control,
  },
  'A dehumidifier',
);

const humidifier = section(
  {
    kind: z.literal('humidifier').describe('Puts water into the air'),
    room,
    water: quantity('mL/h', { above: 0, max: 5000 }, 'Water given to the room').optional(),
    power: watts('Electricity').optional(),
    boils: z
      .boolean({ error: () => 'true or false' })
      .describe('True where it boils the water')
      .optional(),
    runs: runs(['by humidity', 'always', 'by rules']),
    target: target('Relative humidity it keeps'),
    deadband: deadband('%', 30),
    ...control,
  },
  'A humidifier',
);

const extractFan = section(
  {
    kind: z.literal('extract fan').describe('Blows room air outdoors'),
    room,
    flow: flow('Air that it moves').optional(),
    power: watts('Electricity', 1000).optional(),
    runs: runs(['always', 'with activities', 'by humidity', 'by rules']),
    with: activityNames('Activities that it runs with').optional(),
    'run on': minutes('How long it runs on after the activities').optional(),
    target: target('Relative humidity above which it runs'),
    deadband: deadband('%', 30),
    'drier by': drierBy,
    ...control,
  },
  'An extract fan: with activities and run-on, by humidity, or all the time',
);

const flows = (says: string) => named(flow('Air'), 'a mapping from room names to flows', says);

const balancedVentilation = section(
  {
    kind: z.literal('balanced ventilation').describe('Supplies and extracts, with recovery'),
    supplies: flows('Fresh air by room'),
    extracts: flows('Used air by room'),
    'heat recovery': share(
      'Share of the temperature difference handed to the supply air',
    ).optional(),
    'moisture recovery': share(
      'Share of the difference in humidity ratio handed to the supply air',
    ).optional(),
    power: watts('Electricity of both fans').optional(),
    runs: runs(['always', 'by rules']),
    ...control,
  },
  'Balanced ventilation',
);

const purifier = section(
  {
    kind: z.literal('purifier').describe('Filters room air'),
    room,
    'clean air': flow(`Clean-air delivery rate for ${RATED.words.toLowerCase()}`).optional(),
    ...filterShares(),
    power: watts('Electricity', 1000).optional(),
    runs: runs(PURIFIER_RUNS),
    target: quantity(
      RATED.unit,
      { min: 0, max: RATED.limits.level },
      'Level above which it runs, of what it runs by',
    ).optional(),
    deadband: deadband(RATED.unit, RATED.limits.level / 2),
    ...control,
  },
  'An air purifier',
);

const heater = section(
  {
    kind: z.literal('heater').describe('A plug-in heater'),
    room,
    power: watts('Electricity').optional(),
    'radiant share': share('Share of the heat that goes to surfaces by radiation').optional(),
    runs: runs(['by temperature', 'always', 'by rules']),
    target: quantity('°C', { min: 0, max: 35 }, 'Temperature it keeps').optional(),
    deadband: deadband('K', 10),
    ...control,
  },
  'A plug-in heater',
);

const stove = section(
  {
    kind: z.literal('stove').describe('Burns logs'),
    room,
    burns: hours('When there is a fire').optional(),
    batch: quantity('kg', { above: 0, max: 30 }, 'Wood laid on each time').optional(),
    refuelling: quantity('min', { min: 5, max: 600 }, 'From one batch to the next').optional(),
    'wood energy': plainNumber(
      { above: 0, max: 6 },
      'Energy in wood as bought [kWh/kg], net calorific value',
    ).optional(),
    efficiency: quantity(
      '-',
      { above: 0, max: 1 },
      'Heat to the room over the energy in the wood',
    ).optional(),
    'radiant share': share('Share of the heat that goes to surfaces by radiation').optional(),
    lag: minutes('Time constant of the body of the stove').optional(),
    air: choice(['room', 'outdoors'], 'Where its air comes from').optional(),
    'room air': flow('Air drawn from the room while it burns').optional(),
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
  .describe('One device');

export const devicesModel = named(
  deviceModel,
  'a mapping from names of devices to devices',
  'Devices by name',
);

export type DeviceData = z.output<typeof deviceModel>;
export type DeviceOf<K extends DeviceData['kind']> = Extract<DeviceData, { kind: K }>;
