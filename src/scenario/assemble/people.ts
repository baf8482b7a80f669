import type { BodyOutput, Person } from '../../control/household.ts';
import { USUAL_ACTIVITY } from '../../species/breath-by-age.ts';
import { sourcePerSecond } from '../../species/concentration-unit.ts';
import { COMMON, scaled } from '../../units/preset.ts';
import { spellOf } from '../model/clock-fields.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { IRREGULAR } from '../presets/control.ts';
import { PATTERN_OF, type Spot, STAYS } from '../presets/patterns.ts';
import { ASLEEP, AWAKE, BODY_SHARE, breathShare } from '../presets/people.ts';
import type { Use } from '../presets/rooms.ts';
import type { CarriedSpecies } from './carried-species.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

export type PersonData = NonNullable<NonNullable<ScenarioData['household']>['people']>[number];

/** Who lives here as given, or two grown people who work away. */
export function peopleData(data: ScenarioData, defaults: Defaults): readonly PersonData[] {
  const given = data.household?.people;
  if (given !== undefined) return given;
  const words = 'two adults who work away on weekdays';
  defaults.word(['household', 'people'], undefined, words, COMMON);
  return [{}, {}];
}

/** People with where they are by the clock and what their bodies give. */
export function people(
  given: readonly PersonData[],
  { bodies = {}, holidays }: Pick<HouseholdData, 'bodies' | 'holidays'>,
  plans: readonly RoomPlan[],
  species: readonly CarriedSpecies[],
  defaults: Defaults,
): Person[] {
  if (given.length === 0) return [];
  const awake = grownBody('awake', bodies, species, defaults);
  const asleep = grownBody('asleep', bodies, species, defaults);
  return given.map((person, k) => {
    const who = person.who ?? 'adult';
    return {
      name: person.name ?? `${who} ${k + 1}`,
      schedule: staysOf(person, plans, { defaults, index: k }),
      awake: output(awake, person, species),
      asleep: output(asleep, person, species),
      ...irregular(person, k, defaults),
      ...away(person, holidays),
    };
  });
}

function irregular({ irregular: given }: PersonData, index: number, defaults: Defaults) {
  if (given === undefined) return {};
  const number = (key: keyof typeof IRREGULAR) =>
    defaults.number(['household', 'people', index, 'irregular', key], given[key], IRREGULAR[key]);
  const [minutes, asSunday, out] = [number('spread'), number('days off'), number('days out')];
  return { irregular: { minutes, asSunday, out } };
}

/** Holidays of this person and of all who live here. */
function away({ holidays = [] }: PersonData, all: HouseholdData['holidays'] = []) {
  const both = [...all, ...holidays];
  return both.length === 0 ? {} : { holidays: both };
}

/** Rooms in which an infant sleeps. */
export function infantRooms(given: readonly PersonData[], plans: readonly RoomPlan[]): Set<number> {
  const infants = given.filter(({ who }) => who === 'infant');
  const stays = infants.flatMap((person) => staysOf(person, plans));
  return new Set(stays.filter(({ asleep }) => asleep).map(({ room }) => room));
}

function staysOf(
  person: PersonData,
  plans: readonly RoomPlan[],
  listed?: { readonly defaults: Defaults; readonly index: number },
): Person['schedule'] {
  if (person.schedule !== undefined) {
    return person.schedule.map(({ room, days, months, from, to, asleep = false }) => ({
      ...spellOf(days, from, to, months),
      room: indexOf(room, plans),
      asleep,
    }));
  }
  const pattern = person.pattern ?? PATTERN_OF[person.who ?? 'adult'];
  if (listed !== undefined) {
    const at = (key: string) => ['household', 'people', listed.index, key];
    listed.defaults.word(at('pattern'), person.pattern, pattern, COMMON);
    const bed = plans[spotRoom('bed', person, plans)]!.name;
    listed.defaults.word(at('sleeps in'), person['sleeps in'], bed, 'the first bedroom');
  }
  return STAYS[pattern].map(({ spot, ...stay }) => ({
    ...stay,
    room: spotRoom(spot, person, plans),
  }));
}

function spotRoom(spot: Spot, person: PersonData, plans: readonly RoomPlan[]): number {
  const sleeps = person['sleeps in'];
  const lives = person['lives in'];
  if (spot === 'bed' && sleeps !== undefined) return indexOf(sleeps, plans);
  if (spot === 'day' && lives !== undefined) return indexOf(lives, plans);
  return SPOT_USES[spot].map((use) => firstOf(use, plans)).find((room) => room >= 0) ?? 0;
}

const indexOf = (name: string, plans: readonly RoomPlan[]) =>
  plans.findIndex((plan) => plan.name === name);

const firstOf = (use: Use, plans: readonly RoomPlan[]) =>
  plans.findIndex((plan) => plan.use === use);

const SPOT_USES: Readonly<Record<Spot, readonly Use[]>> = {
  bed: ['bedroom', 'living'],
  day: ['living', 'dining', 'kitchen'],
  kitchen: ['kitchen', 'dining', 'living'],
  bath: ['bathroom', 'hall'],
  desk: ['study', 'living', 'dining'],
};

type HouseholdData = NonNullable<ScenarioData['household']>;
type Bodies = NonNullable<HouseholdData['bodies']>;

/** What a grown body gives: heat [W], water [g/h], each species [µg/h, or m3/h by volume]. */
function grownBody(
  state: 'awake' | 'asleep',
  given: Bodies,
  species: readonly CarriedSpecies[],
  defaults: Defaults,
) {
  const preset = state === 'awake' ? AWAKE : ASLEEP;
  const at = (key: string) => ['household', 'bodies', state, key];
  const own = given[state] ?? {};
  const usual = USUAL_ACTIVITY[state];
  return {
    heat: defaults.number(at('heat'), own.heat, preset.heat),
    water: defaults.number(at('water'), own.water, preset.water),
    species: species.map(({ sources: { body }, own: named }) => {
      if (body === undefined) return named?.sources?.person ?? 0;
      const harder = body.breathed === true ? (own.activity ?? usual) / usual : 1;
      const breath = harder === 1 ? body[state] : scaled(body[state], harder);
      return defaults.number(at(body.key), own[body.key], breath);
    }),
  };
}

function output(
  body: ReturnType<typeof grownBody>,
  { who = 'adult', age }: PersonData,
  species: readonly CarriedSpecies[],
): BodyOutput {
  const share = BODY_SHARE[who];
  const breath = breathShare(who, age);
  return {
    sensible: body.heat * share,
    vapour: (body.water * share) / 1000 / 3600,
    species: species.map(({ unit, sources }, s) => {
      const part = sources.body?.breathed === true ? breath : share;
      return sourcePerSecond(body.species[s]! * part, unit);
    }),
  };
}
