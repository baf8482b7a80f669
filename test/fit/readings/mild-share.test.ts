import { expect, test } from 'vitest';
import { meteredHeat } from '../../../src/fit/readings/metered-heat.ts';
import { mildShare } from '../../../src/fit/readings/mild-share.ts';
import type { Home } from '../../../src/home/home.ts';
import type { LoggedSeries } from '../../../src/log/log.ts';
import { madeWeather } from '../../engine/homes.ts';

/** 24 days of 1000 W at 2 °C, then six of 250 W at 15 °C: a mean of 850 W. */
const gas = (every: number, mild = 250): LoggedSeries => {
  const times = Float64Array.from({ length: 30 / every + 1 }, (_, k) => k * every * 86_400);
  const values = times.map((time) => (time <= 24 * 86_400 ? 1000 : mild));
  values[0] = Number.NaN;
  return {
    ...{ quantity: 'gas', place: 'home', room: null, device: null, reading: 'mean', from: 'm.csv' },
    ...{ times, values },
  };
};
const weather = madeWeather({ temperature: (hour) => (hour <= 576 ? 2 : 15) }, { start: 0 });
const source = { name: 'boiler', fuel: 'gas', conversion: { by: 'efficiency', efficiency: 0.9 } };
const home = { sources: [source] } as unknown as Home;
const words = (share: number | null, mild = 250, outdoors = weather) => {
  const log = { series: [gas(1, mild)], start: 0, end: 30 * 86_400 };
  return meteredHeat(log, home, outdoors, { gas: share, electricity: null })!.words;
};

test('mild days show what of a meter heats no rooms', () => {
  expect(mildShare(gas(1), weather)).toBeCloseTo(250 / 850, 9);
  expect(mildShare(gas(0.5), weather)).toBeCloseTo(250 / 850, 9);
});

test('one mild day on which much was heated after all does not count for them', () => {
  // Five mild days of 250 W and one of 1000 W: the middle one has 250 W, of a mean of 875 W.
  const meter = gas(1);
  meter.values[30] = 1000;
  expect(mildShare(meter, weather)).toBeCloseTo(250 / 875, 9);
});

test('weeks and cold logs do not', () => {
  expect(mildShare(gas(6), weather)).toBeNull();
  expect(mildShare(gas(1), madeWeather({ temperature: () => 2 }, { start: 0 }))).toBeNull();
});

test('a share that is assumed is asked about where the meter shows another', () => {
  expect(words(null)).toMatch(
    / On days of 13 °C and more outdoors it shows 29 % of its mean: if nothing is heated then, say "gas beside heating: 0\.29" and fit again\.$/,
  );
  expect(words(0.2)).toMatch(/efficiency of 0\.90\.$/);
});

test('days are mild from 13 °C on', () => {
  const steady = (celsius: number) => madeWeather({ temperature: () => celsius }, { start: 0 });
  expect(mildShare(gas(1), steady(13))).not.toBeNull();
  expect(mildShare(gas(1), steady(12.9))).toBeNull();
});

test('less than is assumed is told too, about as much is not, and no home is all hot water', () => {
  // 40.4 W are 5 % of the mean of 24 days of 1000 W and six of it, 210.5 W are 25 %.
  expect(words(null, 40.4)).toContain('it shows 5 % of its mean: ');
  expect(words(null, 210.5)).not.toContain('it shows');
  const summer = madeWeather({ temperature: () => 20 }, { start: 0 });
  expect(words(null, 1000, summer)).toContain(
    '100 % of its mean: if nothing is heated then, say "gas beside heating: 0.90"',
  );
});
