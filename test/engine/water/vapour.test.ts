import { describe, expect, test } from 'vitest';
import type { Activity } from '../../../src/control/household.ts';
import type { Home } from '../../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { humidityClass } from '../../../src/physics/moisture/humidity-class.ts';
import { compare } from '../../reference/compare.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  quietHousehold,
} from '../homes.ts';
import { last, recordRun, runInput } from '../record-run.ts';

const TOPIC = 'Water vapour, through the simulator';
const PRESSURE = 101_325;
/**
 * Sums per cubic metre count moist air by volume, a run counts kilograms of dry air; they part by
 * the share of vapour in the air. [-]
 */
const BY_VOLUME = (vapourPressure: number): number => vapourPressure / PRESSURE;

function airyHome(volume: number, ach: number): Home {
  const leakage = {
    how: { by: 'rate', flow: (ach * volume) / 3600 },
    share: [1],
    ach50: null,
  } as const;
  return ideallyHeated(bareHome([bareRoom('home', volume)], { leakage }));
}

/** Vapour let into the room at a rate [kg/s] between two hours of every day. */
function steam(rate: number, from = 0, to = 24): Activity {
  return {
    name: 'steam',
    room: 0,
    when: [{ days: 0b1111111, from: from * 60, to: to * 60 }],
    ...{ heat: 0, electricity: 0, vapour: rate, drying: 0, species: [] },
  };
}

function atTwenty(home: Home, activity: Activity, outdoor: { t: number; rh: number }, dt = 600) {
  const w = humidityRatioFromRelativeHumidity(outdoor.t, outdoor.rh, PRESSURE);
  const weather = madeWeather(
    { temperature: () => outdoor.t, humidityRatio: () => w },
    { hours: 24 },
  );
  const household = quietHousehold(home, { setpoints: [always(20)], activities: [activity] });
  return recordRun(runInput({ home, weather }, { household, dt, spinUpDays: 4 }));
}

describe('a family of four in 250 m3 at 0.5 air changes', () => {
  const rate = 12 / 86_400;
  const { room, outdoorVapourPressure } = atTwenty(airyHome(250, 0.5), steam(rate), {
    t: 0,
    rh: 90,
  });
  const inside = last(room.vapourPressure[0]!);
  const outside = last(outdoorVapourPressure);
  const about = {
    topic: TOPIC,
    source: 'solar-housing handbook (12 kg a day) and steady balance G/(nV)',
    mark: 'closed form',
    because: `a run counts dry air by mass, the sum moist air by volume: ${(100 * BY_VOLUME(inside)).toFixed(1)} %`,
    tolerance: { relative: BY_VOLUME(inside) },
  } as const;

  test('has 4 g/m3 and 541 Pa more vapour than outdoors', () => {
    compare({
      ...about,
      what: 'vapour excess of 12 kg a day in 250 m3 at 0.5 1/h',
      unit: 'g/m3',
      expected: 4,
      got: vapourDensity(inside, 20) - vapourDensity(outside, 20),
    });
    compare({
      ...about,
      what: 'the same as vapour pressure at 20 °C',
      unit: 'Pa',
      expected: 541,
      got: inside - outside,
    });
  });

  test.each([
    { share: 0.4, expected: 1 },
    { share: 0.8, expected: 2 },
    { share: 1.3, expected: 3 },
    { share: 1.8, expected: 4 },
    { share: 2.3, expected: 5 },
  ])('is in humidity class $expected with $share of its vapour', ({ share, expected }) => {
    const run = atTwenty(airyHome(250, 0.5), steam(share * rate), { t: 0, rh: 90 });
    const excess = last(run.room.vapourPressure[0]!) - last(run.outdoorVapourPressure);
    expect(humidityClass(excess, 0)).toBe(expected);
  });
});

describe('a room that takes up no moisture, 500 g/h from 9 to 17 h', () => {
  const { room } = atTwenty(airyHome(129.6, 0.5), steam(0.5 / 3600, 9, 17), { t: 20, rh: 30 }, 60);
  const humidity = room.relativeHumidity[0]!;
  const highest = Math.max(...humidity);
  const about = {
    topic: TOPIC,
    unit: '%',
    source: 'exact periodic solution; room of IEA Annex 41, common exercise 0',
    mark: 'closed form',
  } as const;

  test('peaks at 73.9 %', () => {
    const p = Math.max(...room.vapourPressure[0]!);
    compare({
      ...about,
      what: 'periodic room without sorption: highest relative humidity',
      expected: 73.9,
      got: highest,
      tolerance: { absolute: (73.9 - 30) * BY_VOLUME(p) + 0.05 },
      because: 'print rounding, and by mass or by volume: 1.7 % of the rise',
    });
  });

  test('falls back to 30.0 %', () => {
    compare({
      ...about,
      what: 'periodic room without sorption: lowest relative humidity',
      expected: 30,
      got: Math.min(...humidity),
      tolerance: { absolute: 0.05 },
      because: 'print rounding',
    });
  });

  test('peaks when the source stops', () => {
    expect(humidity.indexOf(highest)).toBe(17 * 60 - 1);
  });
});
