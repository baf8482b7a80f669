import * as z from 'zod';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import { airModel } from './air.ts';
import { bandsModel } from './bands.ts';
import { blindsModel } from './blinds.ts';
import { buildModel, FURNISHINGS, leakageModel, MOULD_CLASSES } from './building.ts';
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

const monthDay = (says: string) =>
  z
    .string({ error: () => MONTH_DAY })
    .regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, { error: MONTH_DAY })
    .describe(says);

const homeModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      build: buildModel.optional(),
      leakage: leakageModel.optional(),
      'background vents': quantity(
        'mm2',
        { min: 0, max: 1e6 },
        'Free area of trickle vents and air bricks that are always open, whole home',
      ).optional(),
      rooms: named(roomModel(species), ROOMS_WORDS, 'Rooms by name').refine(
        (rooms) => Object.keys(rooms).length > 0,
        { error: 'at least one room' },
      ),
      doorways: list(
        doorwayModel,
        'a list of doorways',
        'Doorways; where not given, every room opens to the hall',
      ).optional(),
      doors: doorsModel.optional(),
      height: quantity('m', { above: 1, max: 12 }, 'Floor to ceiling, all rooms').optional(),
      'cold spot factor': coldSpot('Temperature factor of the coldest spot, all rooms').optional(),
      furnishing: choice(FURNISHINGS, 'All rooms').optional(),
      'moisture buffer': plainNumber(
        { min: 0, max: 20 },
        'Moisture buffer value of inner surfaces and what stands before them [g/(m2 %RH)], in rooms without a furnishing of their own',
      ).optional(),
      'deep moisture': plainNumber(
        { min: 0, max: 50 },
        'Moisture that surfaces hold over weeks, over what they hold over a day; 0 for thin linings',
      ).optional(),
      'mould class': choice(MOULD_CLASSES, 'Finish of cold corners, all rooms').optional(),
    },
    'The rooms and what surrounds them',
  );

export const planModel = section(
  {
    description: text('What the plan asks, in one sentence').optional(),
    'based on': text('Name of the plan that this one changes further').optional(),
    change: z
      .record(z.string(), z.unknown(), { error: () => 'a mapping shaped like this file' })
      .describe('Only what differs: a merge patch (RFC 7386) of this file; null removes'),
    purchases: list(
      section(
        {
          what: text('What is bought'),
          price: plainNumber({ min: 0 }, 'In the scenario’s currency'),
          lasts: quantity('year', { above: 0, max: 200 }, 'How long until it is bought again'),
        },
        'One purchase',
      ),
      'a list of { what, price, lasts }',
      'What has to be bought for it',
    ).optional(),
  },
  'A named change',
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
      title: text('Name of the home, for tables and reports'),
      invented: z
        .boolean({ error: () => 'true or false' })
        .describe('The home, its people and place are made up; reports say so')
        .optional(),
      weather: text('Weather file, relative to this one'),
      site: siteModel.optional(),
      period: section(
        {
          from: monthDay('First local day').optional(),
          to: monthDay('Last local day').optional(),
        },
        'Part of the year; the whole weather file where not given',
      ).optional(),
      step: quantity(
        'min',
        { min: 1, max: 60 },
        'Control step; a whole number of them makes an hour',
      ).optional(),
      money: moneyModel.optional(),
      home: homeModel(species),
      heating: heatingModel.optional(),
      cooling: coolingModel.optional(),
      blinds: blindsModel.optional(),
      household: householdModel(species).optional(),
      devices: devicesModel.optional(),
      sensors: sensorsModel(species).optional(),
      rules: list(ruleModel(species), 'a list of rules', 'What is done about readings').optional(),
      air: airModel(own).optional(),
      seed: seed.optional(),
      bands: bandsModel(species).optional(),
      log: logModel.optional(),
      doubts: doubtsModel.optional(),
      fitted: fittedModel.optional(),
      plans: named(
        planModel,
        'a mapping from plan names to plans',
        'The first is the baseline',
      ).optional(),
    },
    'A home, its people, and plans to compare',
  );
}

/** A scenario as `scenarioModel` leaves it: checked, every quantity in its documented unit. */
export type ScenarioData = z.output<ReturnType<typeof scenarioModel>>;
export type RoomData = ScenarioData['home']['rooms'][string];
