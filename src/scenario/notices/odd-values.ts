import type { WeekSchedule } from '../../control/household.ts';
import type { Fuel } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import type { FuelPrice, Prices } from '../../home/prices.ts';
import { andList } from '../../units/word-list.ts';
import { USUAL } from '../choices.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { worthOf } from '../presets/currencies.ts';
import { alwaysQuiet } from './always-quiet.ts';
import { blindsInWinter } from './blinds-in-winter.ts';
import { levelsApart } from './levels-apart.ts';
import { nobodyAirs } from './nobody-airs.ts';
import { oddLevels } from './odd-levels.ts';
import type { Questioned } from './questioned.ts';
import { written } from './written.ts';

/**
 * Questions about values that can be and are seldom meant. Nothing is changed or refused: a person who
 * means them reads on.
 */
export function oddValues(asked: Questioned): Notice[] {
  return [
    ...oddPrices(asked.prices),
    ...missingPrices(asked),
    ...oddAreas(asked),
    ...levelsApart(asked),
    ...oddSettings(asked),
    ...unheated(asked),
    ...idleAiring(asked),
    ...nobodyAirs(asked.data, asked.household),
    ...alwaysQuiet(asked.automation),
    ...oddLevels(asked.automation),
    ...blindsInWinter(asked, monthsRun(asked.data)),
  ];
}

/** Prices that look like hundredths, where the currency is one of which a kWh costs a fraction. */
function oddPrices({ currency, fuels }: Prices): Notice[] {
  if (worthOf(currency) !== 1) return [];
  const asked = Object.entries(fuels) as [Fuel, FuelPrice][];
  return asked.flatMap(([fuel, { tariff, standing }]) => {
    const kwh = tariff.by === 'series' ? mean(tariff.prices) : tariff.price;
    const how = tariff.by === 'series' ? ' on the mean' : tariff.by === 'blocks' ? ' by day' : '';
    const remedy =
      tariff.by === 'series'
        ? 'If its file holds hundredths, divide them.'
        : `If that is hundredths, write ${hundredth(kwh)}.`;
    return [
      ...(kwh > MOST_PRICE
        ? [
            {
              id: 'odd-price',
              text: `A kWh of ${fuel} costs ${written(kwh)} ${currency}${how}. ${remedy}`,
            },
          ]
        : []),
      ...(standing > MOST_STANDING
        ? [
            {
              id: 'odd-price',
              text: `Standing for ${fuel} costs ${written(standing)} ${currency} a day. If that is hundredths, write ${hundredth(standing)}.`,
            },
          ]
        : []),
    ];
  });
}

/**
 * Prices that nobody gave: each in a currency of which nobody knows what a kWh costs in it, and beside
 * others that were given, with which they are compared; all of them at once where none was given.
 */
function missingPrices({ data: { money = {} }, prices }: Questioned): Notice[] {
  const { currency, fuels } = prices;
  const missing = (Object.entries(fuels) as [Fuel, FuelPrice][]).flatMap(([fuel, { tariff }]) => {
    const given = money[fuel];
    if (typeof given === 'number' || given?.price !== undefined) return [];
    return tariff.by === 'flat' ? [[fuel, tariff] as const] : [];
  });
  const isKnown = worthOf(currency) !== null;
  if (isKnown && missing.length > 0 && missing.length === Object.keys(fuels).length) {
    const each = missing.map(([fuel, { price }]) => `${written(price)} for ${fuel}`);
    const text = `Nobody gave a price: ${andList(each)} (${currency} a kWh) ${each.length > 1 ? 'are' : 'is'} invented, and all sums rest on that. Write yours under money.`;
    return [{ id: 'all-prices-assumed', text }];
  }
  return missing.map(([fuel, tariff]): Notice => {
    const kwh = `${written(tariff.price)} ${currency} a kWh`;
    return isKnown
      ? {
          id: 'price-assumed',
          text: `Nobody gave a price of ${fuel}: ${kwh} is invented, and what the plan costs beside others rests on it. Give money.${fuel}.`,
        }
      : {
          id: 'price-unknown',
          text: `Nobody gave a price of ${fuel}, and what ${currency} is worth is not known: ${kwh}, as in pounds or euros, makes sums of money meaningless. Give money.${fuel}.`,
        };
  });
}

function oddAreas({ data }: Questioned): Notice[] {
  return Object.entries(data.home.rooms).flatMap(([name, { 'floor area': area }]) => {
    if (area <= LARGEST_ROOM) return [];
    const text = `The floor of ${name} has ${written(area)} m2, more than most whole homes have: is that one room, and in m2?`;
    return [{ id: 'odd-area', text }];
  });
}

function oddSettings({ home, household }: Questioned): Notice[] {
  const named = (schedules: readonly WeekSchedule[], isOdd: (value: number) => boolean) => {
    const rooms = home.rooms.flatMap(({ name }, i) => {
      const values = valuesOf(schedules[i]).filter(
        (value) => Number.isFinite(value) && isOdd(value),
      );
      return values.length === 0 ? [] : [{ name, values }];
    });
    return { rooms: rooms.map(({ name }) => name), values: rooms.flatMap(({ values }) => values) };
  };
  const hot = named(household.setpoints, (value) => value > WARMEST);
  const cold = named(household.cooling ?? [], (value) => value < COOLEST);
  return [
    ...(hot.rooms.length === 0
      ? []
      : [
          {
            id: 'odd-setpoint',
            text: `Heating is set to ${written(Math.max(...hot.values))} °C in ${hot.rooms.join(', ')}: hardly anybody lives so warm, and every kelvin costs.`,
          },
        ]),
    ...(cold.rooms.length === 0
      ? []
      : [
          {
            id: 'odd-setpoint',
            text: `Cooling is set to ${written(Math.min(...cold.values))} °C in ${cold.rooms.join(', ')}: hardly anybody lives so cool, and every kelvin costs.`,
          },
        ]),
  ];
}

/** A factor of usual habits of airing where none of them is listed. */
function idleAiring({ data: { household } }: Questioned): Notice[] {
  const { airing = [USUAL], 'usual airing': wider } = household ?? {};
  if (wider === undefined || airing.includes(USUAL)) return [];
  const text = `Usual airing is ${written(wider)}, but the habits listed do not name ${USUAL}: it changes nothing.`;
  return [{ id: 'usual-airing-idle', text }];
}

/** Rooms that have something to heat them, and no setting that ever asks for heat. */
function unheated({ data, home, household, automation }: Questioned): Notice[] {
  const { source, rooms = {} } = data.heating ?? {};
  const heaters = new Set(home.emitters.map(({ room }) => room));
  const asked = new Set(
    automation.rules.flatMap(({ actions }) =>
      actions.flatMap((action) => (action.do === 'setpoint' ? [action.room] : [])),
    ),
  );
  return home.rooms.flatMap(({ name }, i): Notice[] => {
    const { emitter } = data.home.rooms[name]!;
    const given = emitter !== undefined && emitter !== 'none';
    if (source === 'none' && given) {
      return [question(name, 'the heating has no source')];
    }
    const { frostGuard } = automation.thermostats[i]!;
    const asks = Math.max(...valuesOf(household.setpoints[i])) > frostGuard;
    if (!heaters.has(i) || asks || asked.has(i) || (rooms[name] === 'off' && !given)) return [];
    return [question(name, `its setting never rises above the frost guard of ${frostGuard} °C`)];
  });
}

/** Months of which some days are run, as bits. */
function monthsRun({ period = {} }: ScenarioData): number {
  const { from = '01-01', to = '12-31' } = period;
  const month = (day: string): number => Number(day.slice(0, 2)) - 1;
  let bits = 0;
  for (let m = month(from); ; m = (m + 1) % 12) {
    bits |= 1 << m;
    if (m === month(to)) return bits;
  }
}

const question = (room: string, why: string): Notice => ({
  id: 'nothing-heats',
  text: `Nothing heats ${room} although something stands there to heat it: ${why}.`,
});

function valuesOf(schedule: WeekSchedule | undefined): number[] {
  if (schedule === undefined) return [];
  return [schedule.base, ...schedule.spells.map(({ value }) => value)];
}

const mean = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const hundredth = (value: number): string => written(value / 100);

/** Several times the dearest household kWh, and the dearest day of standing. [currency] */
const MOST_PRICE = 2;
const MOST_STANDING = 10;
const LARGEST_ROOM = 120; // m2
const WARMEST = 26; // °C
const COOLEST = 18; // °C
