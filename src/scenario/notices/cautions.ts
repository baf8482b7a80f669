import type { Automation } from '../../control/automation.ts';
import type { Household } from '../../control/household.ts';
import type { Notice } from '../../home/notices.ts';
import { SPECIES } from '../../species/species-table.ts';
import { lowestOf } from '../assemble/level-schedule.ts';
import { FROST_GUARD } from '../presets/heating.ts';
import type { CautionContext } from './caution-context.ts';
import { BURNT, deviceCautions } from './device-cautions.ts';

/** Sentences that must stand beside the figures of a plan, in the order of weight. */
export function cautionsOf(context: CautionContext): Notice[] {
  return [
    ...carbonMonoxide(context),
    ...deviceCautions(context),
    ...infant(context),
    ...frail(context),
    ...lowSetpoint(context),
    ...frost(context),
    MOULD,
    modelLimits(),
  ];
}

function carbonMonoxide({ home, household }: CautionContext): Notice[] {
  const stove = home.devices.some(({ does }) => does.kind === 'stove');
  const flame = household.activities.some(({ gas = 0 }) => gas > 0);
  if (!stove && !flame && !home.sources.some(({ fuel }) => BURNT.has(fuel))) return [];
  return [
    {
      id: 'co-alarm',
      text: `The home has an appliance that burns fuel: it needs a carbon-monoxide alarm, and sweeping or servicing as its maker says. Readings of ${READINGS} are no substitute.`,
    },
  ];
}

function infant({ people }: CautionContext): Notice[] {
  if (!people.some(({ who }) => who === 'infant')) return [];
  return [
    {
      id: 'infant',
      text: 'An infant lives here: the band of 16 to 20 °C, up to 26 °C while it is too mild outdoors to heat, is a guide only and advice differs between countries. Feel the child, not the reading; medical advice decides.',
    },
  ];
}

function frail({ people }: CautionContext): Notice[] {
  if (!people.some(({ who }) => who === 'frail adult')) return [];
  return [
    {
      id: 'frail',
      text: 'Somebody frail lives here: bands are guides only, medical advice decides, and warmth comes before saving.',
    },
  ];
}

/** Rooms where somebody stays and whose setting falls below 18 °C, in a home that has any heating to set. */
function lowSetpoint({ home, household, automation, people }: CautionContext): Notice[] {
  const stayed = new Set(
    household.people.flatMap(({ schedule }) => schedule.map(({ room }) => room)),
  );
  const low = home.rooms.filter(
    (_, index) => stayed.has(index) && lowest(household, automation, index) < 18,
  );
  if (low.length === 0 || home.emitters.length === 0) return [];
  const rooms = low.map(({ name }) => name).join(', ');
  const who = people.some((p) => p.who === 'infant' || p.who === 'frail adult')
    ? ' Somebody vulnerable lives here.'
    : '';
  const cots = new Set(
    household.people.flatMap(({ schedule }, k) =>
      people[k]?.who === 'infant' ? schedule.filter(({ asleep }) => asleep).map((s) => s.room) : [],
    ),
  );
  const cot = home.rooms.filter((room, index) => cots.has(index) && low.includes(room));
  const cool =
    cot.length === 0
      ? ''
      : ` Where an infant sleeps (${cot.map(({ name }) => name).join(', ')}) the guide is 16 to 20 °C, and overheating is a danger: do not heat that room beyond it.`;
  return [
    {
      id: 'low-setpoint',
      text: `Settings fall below 18 °C in ${rooms}: the WHO guidance asks for 18 °C or more, and for warmer rooms for children, old and ill people.${who}${cool}`,
    },
  ];
}

/**
 * Rooms that no thermostat keeps above the frost guard, and in which no stove or plug-in heater stands.
 *
 * @param isMild  whether a room of that index is known to stay far above freezing all the same
 */
export function frost(
  { home, household, automation }: Pick<CautionContext, 'home' | 'household' | 'automation'>,
  isMild: (room: number) => boolean = () => false,
): Notice[] {
  const otherwise = new Set(
    home.devices.flatMap(({ room, does }) =>
      does.kind === 'stove' || does.kind === 'heater' ? [room] : [],
    ),
  );
  const cold = home.rooms.filter(
    (_, index) =>
      !otherwise.has(index) &&
      !isMild(index) &&
      lowest(household, automation, index) <= FROST_GUARD.value,
  );
  if (cold.length === 0) return [];
  const rooms = cold.map(({ name }) => name).join(', ');
  return [
    {
      id: 'frost',
      text: `Nothing or little heats ${rooms}: water pipes there can freeze. Moist air from warm rooms condenses in cold ones.`,
    },
  ];
}

/** Lowest thermostat setting of a room in the week, by the clock or by its gate. [°C] */
function lowest(household: Household, { thermostats }: Automation, room: number): number {
  const line = household.setpoints[room];
  if (line === undefined) return Number.NEGATIVE_INFINITY;
  const { gate, otherwise } = thermostats[room]!;
  const gated = gate.present !== 'no matter' || gate.windowsShut;
  return Math.min(lowestOf(line), gated ? otherwise : Number.POSITIVE_INFINITY);
}

function orList(words: readonly string[]): string {
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** "CO2, TVOC or particles" */
const READINGS = orList(SPECIES.map(({ plainName }) => plainName));

const MOULD: Notice = {
  id: 'mould',
  text: 'The mould index is a measure of risk at the coldest spot, not a finding. Leaks and rising damp come first; existing mould, tenancy and wiring are matters of local rules and licensed practice.',
};

const modelLimits = (): Notice => ({
  id: 'model-limits',
  text: 'Rooms are taken as well mixed, the weather is past or typical, and many values are assumed: see the list and its ranges. Hot water is left out of energy and money. Differences between plans are better known than the figures themselves.',
});
