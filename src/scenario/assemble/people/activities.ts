import type { Activity, Spell } from '../../../control/household.ts';
import { sourceAmount } from '../../../species/concentration-unit.ts';
import { COMMON, type Preset, scaled } from '../../../units/preset.ts';
import { minutesOf, spellOf } from '../../clock-words.ts';
import type { ActivityData, PersonData, ScenarioData } from '../../model/scenario-model.ts';
import { ACTIVITIES } from '../../presets/activities.ts';
import { householdElectricity } from '../../presets/household-electricity.ts';
import type { CarriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';
import { activitiesElsewhere, activityRoom } from './activity-rooms.ts';

/**
 * What is done as given, or what people like these do.
 *
 * @param plans  rooms of the home, to say what takes place in another than is usual; empty says nothing
 */
export function activityData(
  data: ScenarioData,
  people: readonly PersonData[],
  defaults: Defaults,
  plans: readonly RoomPlan[] = [],
): readonly ActivityData[] {
  const given = data.household?.activities;
  if (given !== undefined) return given;
  const grown = people.filter(({ who }) => who !== 'infant').length;
  const usual = usualActivities(people.length, grown);
  const elsewhere = plans.length === 0 ? [] : activitiesElsewhere(usual, plans);
  const words = [
    `a shower a head (${grown}), two meals a day, two loads of laundry a week, appliances`,
    ...elsewhere.map(({ words }) => words),
  ].join('; ');
  defaults.word(['household', 'activities'], undefined, words, COMMON);
  return usual;
}

/** What people do that nobody says anything of. @param grown  all but infants */
function usualActivities(people: number, grown: number): readonly ActivityData[] {
  if (people === 0) return [{ what: 'fridge' }];
  const showers = Array.from({ length: grown }, (_, k) => 7 * 60 + 10 * k);
  return [
    { what: 'shower', at: showers },
    { what: 'light meal' },
    { what: 'cooking' },
    { what: 'dishes' },
    { what: 'laundry dried indoors', days: 0b0100100 },
    { what: 'fridge' },
    { what: 'lights and appliances' },
    { what: 'standby' },
  ];
}

/** Activities in SI units; what nobody gave is filled from their kind. */
export function activities(
  data: ScenarioData,
  given: readonly ActivityData[],
  people: number,
  plans: readonly RoomPlan[],
  species: readonly CarriedSpecies[],
  defaults: Defaults,
): Activity[] {
  // An assumed list has no places of its own: its numbers are listed with the list.
  const listed = data.household?.activities !== undefined;
  const floorArea = plans.reduce((sum, plan) => sum + plan.area, 0);
  const moist = data.household?.['moisture factor'] ?? 1;
  const yearly = householdElectricity(people, floorArea);
  return given.map((activity, k): Activity => {
    const preset = ACTIVITIES[activity.what];
    const at = (key: string) => ['household', 'activities', k, key];
    const fill = (key: string, given: number | undefined, usual: Preset) => {
      if (given !== undefined || !listed || usual.high === 0) return given ?? usual.value;
      return defaults.number(at(key), given, usual);
    };
    const room = (): number => {
      const { index, wanted } = activityRoom(activity, plans);
      if (wanted !== null && listed) {
        defaults.word(at('room'), undefined, plans[index]!.name, `no ${wanted} is listed`);
      }
      return index;
    };
    const energy =
      preset.ofHousehold === undefined ? preset.energy : scaled(yearly, preset.ofHousehold / 365);
    const number = (key: 'lasts' | 'water' | 'energy') =>
      fill(key, activity[key], key === 'energy' ? energy : preset[key]);
    const when = spells(activity, number, listed ? at('at') : null, defaults);
    const seconds = 60 * (when.allDay ? 1440 : number('lasts'));
    const many = activity.number ?? 1;
    const water = (number('water') * moist * many) / seconds;
    const gas = (activity.gas ?? 0) * many;
    const cooksOnGas = gas > 0 && activity.energy === undefined;
    const electricity = cooksOnGas ? 0 : (number('energy') * many * 3.6e6) / seconds;
    const flame = ((preset.flame ?? 0) * many * 3.6e6) / seconds;
    const steam = (preset.drying ? 0 : water) + (gas * WATER_OF_GAS) / seconds;
    return {
      name: activity.name ?? activity.what,
      room: room(),
      when: when.spells,
      heat: Math.max(0, electricity + (gas * 3.6e6) / seconds - steam * LATENT_HEAT) + flame,
      electricity,
      ...(gas > 0 && { gas: (gas * 3.6e6) / seconds }),
      vapour: steam,
      drying: preset.drying ? water : 0,
      species: species.map(({ unit, sources, perGas = 0, own }) => {
        if (own !== undefined) {
          return sourceAmount(ownAmount(own, activity) * many, unit) / seconds;
        }
        const burnt = sourceAmount(perGas * gas, unit) / seconds;
        if (sources.activity === undefined) return burnt;
        const { key, usual } = sources.activity;
        const amount = fill(key, activity[key], usual[activity.what] ?? NONE);
        return sourceAmount(amount * many, unit) / seconds + burnt;
      }),
      ...(preset.stopsFor !== undefined && { stopsFor: preset.stopsFor }),
    };
  });
}

/** What an activity gives of a species that the scenario names: by the activity's name, else its kind. */
function ownAmount(
  { sources }: NonNullable<CarriedSpecies['own']>,
  { name, what }: ActivityData,
): number {
  const amounts = new Map(Object.entries(sources?.activities ?? {}));
  return amounts.get(name ?? what) ?? amounts.get(what) ?? 0;
}

interface When {
  readonly spells: readonly Spell[];
  readonly allDay: boolean;
}

function spells(
  { what, days, months, at }: ActivityData,
  number: (key: 'lasts') => number,
  path: readonly (string | number)[] | null,
  defaults: Defaults,
): When {
  const usual = ACTIVITIES[what].at;
  if (at === undefined && usual === null) {
    return { spells: [spellOf(days, 0, 1440, months)], allDay: true };
  }
  if (at === undefined && path !== null) {
    defaults.word(path, undefined, usual!.join(', '), COMMON);
  }
  const lasts = number('lasts');
  const starts = at ?? usual!.map(minutesOf);
  return { spells: starts.map((from) => spellOf(days, from, from + lasts, months)), allDay: false };
}

const NONE: Preset = { value: 0, low: 0, high: 0, source: COMMON };
/**
 * Latent heat of steam, which takes along what the cooker gave. [J/kg]
 * Source: 2501 - 2.361 t kJ/kg at 20 °C (see `latentHeat`), 0.682 kWh a litre.
 */
const LATENT_HEAT = 2.454e6;
/** Methane, 44.9 g a net MJ over 1.108, gross over net; closed form. [kg/kWh as bought] */
const WATER_OF_GAS = 0.146;
