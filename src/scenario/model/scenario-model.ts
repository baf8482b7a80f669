import * as z from 'zod';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import { FURNISHINGS } from '../choices.ts';
import { VENTS } from '../presets/leakage.ts';
import { DEEP_MOISTURE } from '../presets/moisture.ts';
import { HEIGHT } from '../presets/rooms.ts';
import { STEP } from '../presets/step.ts';
import { airModel } from './air.ts';
import { bandsModel } from './bands.ts';
import { blindsModel } from './blinds.ts';
import { buildModel, leakageModel, MOULD_CLASSES } from './building.ts';
import { coolingModel } from './cooling.ts';
import { devicesModel } from './device.ts';
import { doorsModel, doorwayModel } from './doorway.ts';
import { doubtsModel } from './doubts.ts';
import { choice, list, named, plainNumber, quantity, section, text } from './fields.ts';
import { fittedModel } from './fitted.ts';
import { heatingModel } from './heating.ts';
import { householdModel } from './household.ts';
import { logModel } from './log.ts';
import { moneyModel } from './money.ts';
import { MONTH_DAY } from './month-day.ts';
import { coldSpot, roomModel } from './room.ts';
import { ruleModel } from './rule.ts';
import { seed, sensorsModel } from './sensors.ts';
import { siteModel } from './site.ts';

const ROOMS_WORDS = 'a mapping from room names to rooms';

const monthDay = (says: string, eg: string) =>
  z
    .string({ error: () => MONTH_DAY })
    .regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, { error: MONTH_DAY })
    .meta({ description: says, eg, otherwise: 'that of the weather file' });

const homeModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      build: buildModel.optional(),
      leakage: leakageModel.optional(),
      'background vents': quantity(
        'mm2',
        { min: 0, max: 1e6 },
        'Free area of all trickle vents and air bricks of the home that are always open',
        { usual: VENTS },
      ).optional(),
      rooms: named(roomModel(species), ROOMS_WORDS, 'Rooms of the home, each under its name', {
        eg: { living: { 'floor area': '20 m2' }, bedroom: { 'floor area': '12 m2' } },
      }).refine((rooms) => Object.keys(rooms).length > 0, { error: 'at least one room' }),
      doorways: list(doorwayModel, 'a list of doorways', 'Doorways between rooms', {
        otherwise: 'every room opens to the hall of its storey, else to the first hall or room',
      }).optional(),
      doors: doorsModel.optional(),
      height: quantity('m', { above: 1, max: 12 }, 'Height of all rooms from floor to ceiling', {
        usual: HEIGHT,
      }).optional(),
      'cold spot factor': coldSpot(
        'How near the coldest spot of outer walls stays to room temperature, in all rooms',
        { otherwise: 'by the heat transmittance of the walls' },
      ).optional(),
      furnishing: choice(FURNISHINGS, 'How much stands in all rooms that takes up moisture', {
        usual: 'furnished',
      }).optional(),
      'moisture buffer': plainNumber(
        { min: 0, max: 20 },
        'Moisture buffer value of inner surfaces and what stands before them, in rooms without a furnishing of their own',
        { unit: 'g/(m2 %RH)', eg: 0.5, otherwise: 'by the furnishing' },
      ).optional(),
      'deep moisture': plainNumber(
        { min: 0, max: 50 },
        'Moisture that surfaces hold over weeks as a multiple of what they hold over a day, 0 for thin linings',
        { usual: DEEP_MOISTURE },
      ).optional(),
      'mould class': choice(
        MOULD_CLASSES,
        'How readily mould grows on the finish of cold corners, in all rooms',
        { usual: 'sensitive' },
      ).optional(),
    },
    'The rooms of the home, what lies between them, and how they are built',
    { eg: { rooms: { living: { 'floor area': '20 m2' } } } },
  );

export const planModel = section(
  {
    description: text('What the plan asks, in one sentence, for tables and reports', {
      eg: 'The bedroom is aired for ten minutes on waking.',
      otherwise: 'nothing',
    }).optional(),
    'based on': text('Name of the plan that this one changes further', {
      eg: 'aired',
      otherwise: 'the file itself',
    }).optional(),
    change: z
      .record(z.string(), z.unknown(), { error: () => 'a mapping shaped like this file' })
      .meta({
        description:
          'What differs from this file, written in its shape (a merge patch, RFC 7386), where null removes a key',
        eg: { heating: { setpoint: '18 °C' } },
      }),
    purchases: list(
      section(
        {
          what: text('What is bought, for tables', { eg: 'dehumidifier' }),
          price: plainNumber({ min: 0 }, 'What the purchase costs', { unit: 'currency', eg: 150 }),
          lasts: quantity(
            'year',
            { above: 0, max: 200 },
            'How long the purchase lasts until it is bought again',
            { eg: '10 years' },
          ),
        },
        'One purchase',
      ),
      'a list of { what, price, lasts }',
      'What has to be bought for the plan',
      { otherwise: 'nothing' },
    ).optional(),
  },
  'One plan: what differs from the file, and what it costs to buy',
  { eg: { change: { heating: { setpoint: '18 °C' } } } },
);

/**
 * The scenario file: what may stand in it, and what it means in the documented units.
 *
 * @param own  the species that the file names itself
 */
export function scenarioModel(own: readonly KnownSpecies[]) {
  const species = [...SPECIES, ...own];
  return section(
    {
      title: text('Name of the home, for tables and reports', { eg: 'Terraced house of two' }),
      invented: z
        .boolean({ error: () => 'true or false' })
        .meta({
          description: 'Whether home, people and place are made up, which reports then say',
          eg: true,
          usual: false,
        })
        .optional(),
      weather: text('Path of the weather file, from the folder of this file', {
        eg: 'weather/saltmere-typical.csv',
      }),
      site: siteModel.optional(),
      period: section(
        {
          from: monthDay('First local day that is simulated, as month and day', '10-01').optional(),
          to: monthDay('Last local day that is simulated, as month and day', '03-31').optional(),
        },
        'Part of the year that is simulated',
        { eg: { from: '10-01', to: '03-31' }, otherwise: 'the whole weather file' },
      ).optional(),
      step: quantity(
        'min',
        { min: 1, max: 60 },
        'Time step of the simulation, of which a whole number makes an hour',
        { usual: STEP },
      ).optional(),
      money: moneyModel.optional(),
      home: homeModel(species),
      heating: heatingModel.optional(),
      cooling: coolingModel.optional(),
      blinds: blindsModel.optional(),
      household: householdModel(species).optional(),
      devices: devicesModel.optional(),
      sensors: sensorsModel(species).optional(),
      rules: list(ruleModel(species), 'a list of rules', 'Rules that act on readings of sensors', {
        otherwise: 'none',
      }).optional(),
      air: airModel(own).optional(),
      seed: seed.optional(),
      bands: bandsModel(species).optional(),
      log: logModel(own.map(({ name }) => name)).optional(),
      doubts: doubtsModel.optional(),
      fitted: fittedModel.optional(),
      plans: named(
        planModel,
        'a mapping from plan names to plans',
        'Plans to compare, each under its name, the first of which is the baseline',
        {
          eg: { now: { change: {} }, cooler: { change: { heating: { setpoint: '18 °C' } } } },
          otherwise: 'one plan, the file as it is',
        },
      ).optional(),
    },
    'A home, its people, and plans to compare',
  );
}

/** A scenario as `scenarioModel` leaves it: checked, every quantity in its documented unit. */
export type ScenarioData = z.output<ReturnType<typeof scenarioModel>>;
export type RoomData = ScenarioData['home']['rooms'][string];
export type PersonData = NonNullable<NonNullable<ScenarioData['household']>['people']>[number];
export type ActivityData = NonNullable<
  NonNullable<ScenarioData['household']>['activities']
>[number];
