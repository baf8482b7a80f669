import type { BodyOutput, Person } from '../../../control/household.ts';
import { USUAL_ACTIVITY } from '../../../species/breath-by-age.ts';
import { sourcePerSecond } from '../../../species/concentration-unit.ts';
import { COMMON, scaled } from '../../../units/preset.ts';
import { spellOf } from '../../clock-words.ts';
import type { PersonData, ScenarioData } from '../../model/scenario-model.ts';
import { IRREGULAR } from '../../presets/control.ts';
import { ASLEEP, AWAKE, BODY_SHARE, breathShare } from '../../presets/people.ts';
import type { CarriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import { spotRoom, staysOf } from './person-stays.ts';
import { bedRooms } from './usual-beds.ts';

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
  { bodies = {}, holidays, guests = [], 'moisture factor': moist = 1 }: Lives,
  plans: readonly RoomPlan[],
  species: readonly CarriedSpecies[],
  defaults: Defaults,
): Person[] {
  if (given.length + guests.length === 0) return [];
  const body = (state: 'awake' | 'asleep') => {
    const grown = grownBody(state, bodies, species, defaults);
    return { ...grown, water: grown.water * moist };
  };
  const awake = body('awake');
  const asleep = body('asleep');
  const beds = bedRooms(given, plans);
  const residents = given.map((person, k): Person => {
    const who = person.who ?? 'adult';
    const schedule = staysOf(person, beds[k]!, plans, { defaults, index: k });
    return {
      name: person.name ?? `${who} ${k + 1}`,
      ...(person.name === undefined && { drawnBy: lifeOf(who, schedule, plans) }),
      schedule,
      awake: output(awake, person, species),
      asleep: output(asleep, person, species),
      ...irregular(person, k, defaults),
      ...away(person, holidays),
    };
  });
  const visitors = guests.flatMap((guest) => {
    const { number = 1, name = 'guest', who = 'adult', room } = guest;
    const where = room === undefined ? spotRoom('day', {}, plans) : roomCalled(room, plans);
    const stay = {
      ...spellOf(guest.days, guest.from, guest.to, guest.months),
      room: where,
      asleep: guest.asleep ?? false,
    };
    const one: Person = {
      name,
      guest: true,
      schedule: [stay],
      awake: output(awake, { who }, species),
      asleep: output(asleep, { who }, species),
      ...away({}, holidays),
    };
    return Array.from({ length: number }, () => one);
  });
  return [...residents, ...visitors];
}

/** Who somebody without a name is: by kind and by where when, whatever the place in the list. */
function lifeOf(who: string, schedule: Person['schedule'], plans: readonly RoomPlan[]): string {
  return [who, ...schedule.map((stay) => JSON.stringify({ ...stay, room: plans[stay.room]?.name }))]
    .sort()
    .join();
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

type HouseholdData = NonNullable<ScenarioData['household']>;
type Lives = Pick<HouseholdData, 'bodies' | 'holidays' | 'guests' | 'moisture factor'>;
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
