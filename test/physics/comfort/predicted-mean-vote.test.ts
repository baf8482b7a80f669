import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  predictedMeanVote,
  predictedPercentageDissatisfied,
} from '../../reference/physics/comfort/predicted-mean-vote.ts';

test.each([
  [22, 22, 0.1, 60, 1.2, 0.5, -0.75, 17],
  [27, 27, 0.1, 60, 1.2, 0.5, 0.77, 17],
  [27, 27, 0.3, 60, 1.2, 0.5, 0.44, 9],
  [23.5, 25.5, 0.1, 60, 1.2, 0.5, -0.01, 5],
  [23.5, 25.5, 0.3, 60, 1.2, 0.5, -0.55, 11],
  [19, 19, 0.1, 40, 1.2, 1, -0.6, 13],
  [23.5, 23.5, 0.3, 40, 1.2, 1, 0.12, 5],
  [23, 21, 0.1, 40, 1.2, 1, 0.05, 5],
  [23, 21, 0.3, 40, 1.2, 1, -0.16, 6],
  [22, 22, 0.1, 60, 1.6, 0.5, 0.05, 5],
  [27, 27, 0.1, 60, 1.6, 0.5, 1.17, 34],
  [27, 27, 0.3, 60, 1.6, 0.5, 0.95, 24],
])('air %s, radiant %s °C, %s m/s, %s %%, %s met, %s clo', (...given) => {
  const [airTemperature, radiantTemperature, airSpeed, relativeHumidity, met, clo, vote, ppd] =
    given;
  const climate = { airTemperature, radiantTemperature, airSpeed, relativeHumidity };
  const got = predictedMeanVote(climate, met, clo);
  const what = `air ${airTemperature}, radiant ${radiantTemperature} °C, ${airSpeed} m/s, ${relativeHumidity} %, ${met} met, ${clo} clo`;
  const row = {
    topic: 'Comfort',
    source: 'ISO 7730, table D.1, by way of a public validation set',
    mark: 'published arithmetic',
  } as const;
  compare({
    ...row,
    what: `predicted mean vote, ${what}`,
    unit: '-',
    expected: vote,
    got,
    tolerance: { absolute: 0.02 },
    because: 'printed to a hundredth, found by an iteration that stops early',
  });
  compare({
    ...row,
    what: `dissatisfied, ${what}`,
    unit: '%',
    expected: ppd,
    got: predictedPercentageDissatisfied(got),
    tolerance: { absolute: 1 },
    because: 'printed in whole percents from the printed vote',
  });
});

test.each([
  [19.6, 86, -0.5],
  [23.9, 66, 0.5],
  [25.7, 15, 0.5],
  [21.2, 20, -0.5],
])('the winter zone of another standard: %s °C and %s %%', (temperature, humidity, expected) => {
  compare({
    topic: 'Comfort',
    what: `predicted mean vote on the edge of the zone, ${temperature} °C, ${humidity} %, 0.1 m/s, 1.1 met, 1 clo`,
    unit: '-',
    source: 'ASHRAE 55-2017',
    mark: 'published',
    expected,
    got: predictedMeanVote(
      {
        airTemperature: temperature,
        radiantTemperature: temperature,
        airSpeed: 0.1,
        relativeHumidity: humidity,
      },
      1.1,
      1,
    ),
    tolerance: { absolute: 0.1 },
    because: 'limits rest on another index and are printed to a tenth of a degree',
  });
});

const ROOM = { airTemperature: 21, radiantTemperature: 20, airSpeed: 0.1, relativeHumidity: 45 };

test('warmer, damper, busier and better dressed all feel warmer', () => {
  const vote = predictedMeanVote(ROOM, 1.2, 0.8);
  expect(predictedMeanVote({ ...ROOM, airTemperature: 22 }, 1.2, 0.8)).toBeGreaterThan(vote);
  expect(predictedMeanVote({ ...ROOM, radiantTemperature: 22 }, 1.2, 0.8)).toBeGreaterThan(vote);
  expect(predictedMeanVote({ ...ROOM, relativeHumidity: 65 }, 1.2, 0.8)).toBeGreaterThan(vote);
  expect(predictedMeanVote(ROOM, 1.5, 0.8)).toBeGreaterThan(vote);
  expect(predictedMeanVote(ROOM, 1.2, 1)).toBeGreaterThan(vote);
  expect(predictedMeanVote({ ...ROOM, airSpeed: 0.5 }, 1.2, 0.8)).toBeLessThan(vote);
});

test.each([
  // Equations 1 to 4 worked out apart, by relaxing the clothes' temperature to 25.755 and 34.072 °C.
  ['a dressed person in still air of 20 °C loses heat by natural convection', 20, 1.2, 1, -0.3172],
  ['a naked one in still air of 28 °C offers only the skin', 28, 1, 0, -0.4227],
])('%s', (_, temperature, metabolism, clothing, expected) => {
  const climate = { airTemperature: temperature, radiantTemperature: temperature, airSpeed: 0 };
  const vote = predictedMeanVote({ ...climate, relativeHumidity: 50 }, metabolism, clothing);
  expect(Math.abs(vote - expected)).toBeLessThan(5e-5); // half the last digit
});

test('nobody pleases everybody, and cold is as bad as warm', () => {
  expect(predictedPercentageDissatisfied(0)).toBe(5);
  expect(predictedPercentageDissatisfied(1)).toBe(predictedPercentageDissatisfied(-1));
});

test('climates beyond the standard are refused', () => {
  expect(() => predictedMeanVote({ ...ROOM, airTemperature: 8 }, 1.2, 1)).toThrow(
    'predictedMeanVote: air temperature must be between 10 and 30 °C, got 8 °C',
  );
  expect(() => predictedMeanVote({ ...ROOM, relativeHumidity: Number.NaN }, 1.2, 1)).toThrow(
    RangeError,
  );
  expect(() => predictedPercentageDissatisfied(Number.NaN)).toThrow(RangeError);
});
