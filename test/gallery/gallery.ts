import type { Chart } from '../../src/report/charts/chart.ts';
import { air, coldSpots, week } from './pictures.ts';
import type { GalleryRun } from './run-gallery.ts';

/** A question of the gallery. */
export interface Exhibit {
  /** Name of the scenario in scenarios/gallery/, of the picture, and of the answer in the page. */
  readonly home: string;
  readonly picture: (run: GalleryRun) => Chart;
  /** Three sentences, made from the figures. */
  readonly answer: (run: GalleryRun) => readonly [string, string, string];
  /** What the words of the answer say besides its figures, so that they cannot become untrue. */
  readonly holds: (run: GalleryRun) => Readonly<Record<string, boolean>>;
}

const roomOf = (run: GalleryRun, plan: string, room: string) => run[plan]!.measures.rooms[room]!;
const bill = (run: GalleryRun, plan: string): number => run[plan]!.measures.money.energy;
/** What a plan costs for energy over the first plan, in the period that was run. */
const dearer = (run: GalleryRun, plan: string): number =>
  bill(run, plan) - bill(run, Object.keys(run)[0]!);
const price = (run: GalleryRun, plan: string): number => run[plan]!.plan.purchases[0]!.price;
/** Of a kWh of a fuel, the same at all times. */
function priceOf(run: GalleryRun, fuel: 'wood'): string {
  const { tariff } = Object.values(run)[0]!.plan.prices.fuels[fuel]!;
  return tariff.by === 'flat' ? tariff.price.toFixed(2) : 'various';
}

const gbp = (sum: number): string => `${Math.abs(sum).toFixed(0)} GBP`;

export const GALLERY: readonly Exhibit[] = [
  {
    home: 'damp-bedroom',
    picture: (run) => coldSpots(run, 'bedroom', ['as-lived', 'aired', 'warmer', 'dehumidifier']),
    answer: (run) => {
      const index = (plan: string, room = 'bedroom') =>
        roomOf(run, plan, room).mould_index_peak.toFixed(1);
      const wet = (plan: string) => {
        const hours = roomOf(run, plan, 'bedroom').cold_spot_hours_above_80_pct;
        return `${((100 * hours) / run[plan]!.measures.period.hours).toFixed(0)} %`;
      };
      return [
        `As it is, the corner of the bedroom is wetter than 80 % for ${wet('as-lived')} of the winter half of the year, and the mould index comes to ${index('as-lived')} of 6.`,
        `With a dehumidifier no mould starts there (index ${index('dehumidifier')}, while the living room keeps ${index('dehumidifier', 'living')} of ${index('as-lived', 'living')}; ${gbp(dearer(run, 'dehumidifier'))} more for energy from October to March, and ${gbp(price(run, 'dehumidifier'))} for itself), while 19 °C in the bedroom go part of the way (index ${index('warmer')}, ${gbp(dearer(run, 'warmer'))}).`,
        `Surprising is how much less it helps to open the window for ten minutes twice a day (index ${index('aired')}), or to dry the laundry in another room of the same flat (index ${index('laundry-elsewhere')}).`,
      ];
    },
    holds: (run) => {
      const index = (plan: string) => roomOf(run, plan, 'bedroom').mould_index_peak;
      return {
        'no mould starts in the bedroom: nothing to be seen under a microscope':
          index('dehumidifier') < 1,
        'it still does in the living room, if less':
          roomOf(run, 'dehumidifier', 'living').mould_index_peak > 1 &&
          roomOf(run, 'dehumidifier', 'living').mould_index_peak <
            roomOf(run, 'as-lived', 'living').mould_index_peak,
        'warmth goes part of the way':
          index('warmer') < 0.7 * index('as-lived') && index('warmer') > 1,
        'airing helps less': index('aired') > index('warmer') && index('aired') < index('as-lived'),
        'another place for the laundry helps less':
          index('laundry-elsewhere') > index('warmer') &&
          index('laundry-elsewhere') < index('as-lived'),
        'both cost more': dearer(run, 'dehumidifier') > 0 && dearer(run, 'warmer') > 0,
      };
    },
  },
  {
    home: 'home-office',
    picture: (run) => air(run, 'co2', ['as-lived', 'slow-fan']),
    answer: (run) => {
      const co2 = (plan: string) =>
        `${roomOf(run, plan, 'studio').species['co2']!.mean.toFixed(0)} ppm`;
      const more = dearer(run, 'slow-fan') - dearer(run, 'every-two-hours');
      return [
        `With ten minutes of open window after getting up, the air of the studio has ${co2('as-lived')} of CO2 as a mean of the winter half of the year, day and night.`,
        `Five minutes of wide open window every two hours that somebody is in make it ${co2('every-two-hours')} for ${gbp(dearer(run, 'every-two-hours'))} of electricity; a window that stands tilted all day makes it ${co2('tilted')} for ${gbp(dearer(run, 'tilted'))}.`,
        `Surprising is a slow fan in the bathroom: for ${gbp(more)} more than all that opening of windows, and ${gbp(price(run, 'slow-fan'))} for itself, it gets to ${co2('slow-fan')}, because it also runs while everybody sleeps.`,
      ];
    },
    holds: (run) => {
      const co2 = (plan: string) => roomOf(run, plan, 'studio').species['co2']!;
      return {
        'the fan gets lowest':
          co2('slow-fan').mean < co2('tilted').mean &&
          co2('slow-fan').mean < co2('every-two-hours').mean,
        'it is ahead at night': co2('slow-fan').night < 0.8 * co2('tilted').night,
        'it costs little more than opening windows every two hours':
          dearer(run, 'slow-fan') > dearer(run, 'every-two-hours') &&
          dearer(run, 'slow-fan') < 1.2 * dearer(run, 'every-two-hours'),
        'it costs less than the tilted window':
          dearer(run, 'slow-fan') < 0.6 * dearer(run, 'tilted'),
        'all of them cost more': dearer(run, 'every-two-hours') > 0 && dearer(run, 'slow-fan') > 0,
      };
    },
  },
  {
    home: 'stove-evenings',
    picture: (run) => air(run, 'pm25', ['as-lived', 'purifier']),
    answer: (run) => {
      const pm = (plan: string) => roomOf(run, plan, 'living').species['pm25']!.evening.toFixed(0);
      return [
        `On evenings the living room has ${pm('as-lived')} µg/m3 of fine particles with the fire and ${pm('no-fire')} without: the rest comes from the kitchen and from outdoors.`,
        `A tight stove for ${gbp(price(run, 'tight-stove'))} brings it to ${pm('tight-stove')} µg/m3, a purifier for ${gbp(price(run, 'purifier'))} to ${pm('purifier')}, which is less than without any fire.`,
        `Surprising is the bill: with wood at ${priceOf(run, 'wood')} GBP a kWh, from November to February the fire costs ${gbp(dearer(run, 'no-fire'))} more than radiators alone.`,
      ];
    },
    holds: (run) => {
      const pm = (plan: string) => roomOf(run, plan, 'living').species['pm25']!.evening;
      return {
        'the fire is the larger part': pm('no-fire') < pm('as-lived') / 2,
        'a tight stove lies between':
          pm('tight-stove') < pm('as-lived') && pm('tight-stove') > pm('no-fire'),
        'the purifier does more than leaving the fire out': pm('purifier') < pm('no-fire'),
        'the fire costs': dearer(run, 'no-fire') < 0,
      };
    },
  },
  {
    home: 'cheap-night',
    picture: (run) =>
      week(run, 'living', ['even', 'let-cool', 'charged', 'charged-hard'], 'lowest'),
    answer: (run) => {
      const under = roomOf(run, 'charged-hard', 'living').outside_band_occupied_hours;
      const cold = under.temperature_low.toFixed(0);
      return [
        `To heat to 22 °C while electricity is cheap and to 19 °C at all other times costs ${gbp(dearer(run, 'charged'))} less from October to April than 20 °C day and night, of ${gbp(bill(run, 'even'))} for all electricity, and rooms are no colder than then for anybody.`,
        `With 24 °C and 18 °C it is ${gbp(dearer(run, 'charged-hard'))} less, but the living room lies up to half a kelvin under its band for ${cold} h with somebody in.`,
        `Surprising is the rule from days of boilers, to let the house cool at night: it saves heat (${heat(run, 'let-cool')} kWh after ${heat(run, 'even')}), and costs ${gbp(dearer(run, 'let-cool'))} more, because the morning's heat is bought at the price of the day.`,
      ];
    },
    holds: (run) => ({
      'charging is cheaper': dearer(run, 'charged') < 0,
      'charging harder is cheaper still': dearer(run, 'charged-hard') < dearer(run, 'charged'),
      'no room is colder for anybody': coldHours(run, 'charged') <= coldHours(run, 'even'),
      'charging harder lets it fall under its band':
        roomOf(run, 'charged-hard', 'living').outside_band_occupied_hours.temperature_low > 100,
      'by no more than half a kelvin': roomOf(run, 'charged-hard', 'living').felt_cold_hours < 1,
      'letting cool saves heat and costs money':
        dearer(run, 'let-cool') > 0 &&
        run['let-cool']!.measures.heating.useful_kwh < run['even']!.measures.heating.useful_kwh,
    }),
  },
  {
    home: 'summer-heat',
    picture: (run) =>
      week(run, 'living', ['as-lived', 'blinds-inside', 'screens-outside', 'both'], 'highest'),
    answer: (run) => {
      const hot = (plan: string, room: string) => `${hotHours(run, plan, room).toFixed(0)} h`;
      return [
        `From June to August it is too hot for somebody in the living room during ${hot('as-lived', 'living')}, and in the bedroom during ${hot('as-lived', 'bedroom')}.`,
        `Screens outside the windows leave ${hot('screens-outside', 'living')} and ${hot('screens-outside', 'bedroom')} for ${gbp(price(run, 'screens-outside'))}, and with windows tilted at night instead of by day ${hot('both', 'living')} and ${hot('both', 'bedroom')}.`,
        `Surprising is how much less blinds inside the glass do, ${hot('blinds-inside', 'living')} and ${hot('blinds-inside', 'bedroom')}: what they take of the sun is in the room already.`,
      ];
    },
    holds: (run) => ({
      'screens take half and more':
        hotHours(run, 'screens-outside', 'living') < 0.5 * hotHours(run, 'as-lived', 'living'),
      'night air takes more':
        hotHours(run, 'both', 'bedroom') < 0.5 * hotHours(run, 'screens-outside', 'bedroom'),
      'blinds inside do less than half of what screens do': ['living', 'bedroom'].every((room) => {
        const hours = (plan: string) => hotHours(run, plan, room);
        const taken = (plan: string) => hours('as-lived') - hours(plan);
        return taken('blinds-inside') < 0.5 * taken('screens-outside');
      }),
    }),
  },
  {
    home: 'hay-fever',
    picture: (run) => air(run, 'pollen', ['as-lived', 'screen']),
    answer: (run) => {
      const grains = (plan: string, room = 'living') => roomOf(run, plan, room).species['pollen']!;
      const mean = (plan: string) => grains(plan).mean.toFixed(1);
      const index = (plan: string) => roomOf(run, plan, 'bedroom').mould_index_peak.toFixed(1);
      const night = Math.max(...Object.keys(run).map((plan) => grains(plan, 'bedroom').night));
      return [
        `With windows tilted by day the living room has ${mean('as-lived')} grains of grass pollen in a cubic metre from mid-May to July; with windows shut ${mean('shut')}, but then it gets damp (mould index of the bedroom ${index('shut')} after ${index('as-lived')}).`,
        `A screen before the windows for ${gbp(price(run, 'screen'))} leaves ${mean('screen')} grains and the fresh air; a purifier for ${gbp(price(run, 'purifier'))} beside the open window leaves ${mean('purifier')}.`,
        `Surprising is the night: the bedroom has no more than ${night.toFixed(1)} grains while people sleep, with or without any of this, because grains settle within an hour once windows are shut.`,
      ];
    },
    holds: (run) => {
      const grains = (plan: string, room = 'living') => roomOf(run, plan, room).species['pollen']!;
      return {
        'shut windows keep most out': grains('shut').mean < 0.1 * grains('as-lived').mean,
        'a screen does more than a purifier': grains('screen').mean < 0.5 * grains('purifier').mean,
        'nights are alike': Object.keys(run).every((plan) => grains(plan, 'bedroom').night < 1),
        'it gets damp':
          roomOf(run, 'shut', 'bedroom').mould_index_peak >
          roomOf(run, 'as-lived', 'bedroom').mould_index_peak + 1,
      };
    },
  },
];

const heat = (run: GalleryRun, plan: string): string =>
  run[plan]!.measures.heating.useful_kwh.toFixed(0);

/** Hours of a winter day in the cold with somebody in, of the room that is worst off. */
const coldHours = (run: GalleryRun, plan: string): number =>
  Math.max(
    ...Object.values(run[plan]!.measures.rooms).map((room) => room.winter_cold_hours_per_day ?? 0),
  );

const hotHours = (run: GalleryRun, plan: string, room: string): number =>
  roomOf(run, plan, room).outside_band_occupied_hours.temperature_high;
