import { describe, expect, test } from 'vitest';
import { type Automation, PLAIN_THERMOSTAT } from '../../../src/control/automation.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { always, bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';

const [HALL, BEDROOM] = [0, 1];
const BAND = 2;

/** Hall and bedroom that each lose 40 W/K, with a radiator of 1500 W each. */
const home = ideallyHeated(
  bareHome(
    [bareRoom('hall', 40), bareRoom('bedroom', 40)].map((r) => ({ ...r, furnishingFactor: 20 })),
    {
      leakage: { how: { by: 'rate', flow: 80 / AIR_HEAT }, share: [0.5, 0.5], ach50: null },
    },
  ),
  1500,
);

const plainValve = { ...PLAIN_THERMOSTAT, proportionalBand: BAND };
const oneThermostat: Automation = {
  ...noAutomation(2),
  thermostats: [{ ...PLAIN_THERMOSTAT, deadband: 1 }, plainValve],
  callRoom: HALL,
};

function follow(automation: Automation, hall: number, bedroom: number, hallGain = 0) {
  const household = quietHousehold(home, {
    setpoints: [always(hall), always(bedroom)],
    activities: [
      {
        ...{ name: 'sun in the hall', room: HALL, heat: hallGain },
        ...{ electricity: 0, vapour: 0, drying: 0, species: [] },
        when: [{ days: 127, from: 0, to: 1440 }],
      },
    ],
  });
  const weather = lastDays({ temperature: () => 5 }, 8);
  return recordRun(runInput({ home, weather }, { household, automation, hours: 144, dt: 300 }))
    .room;
}

const mean = (series: Float64Array): number => {
  const tail = series.subarray(series.length / 2);
  return tail.reduce((sum, x) => sum + x, 0) / tail.length;
};

describe('one thermostat in the hall, a plain valve in the bedroom', () => {
  test('the bedroom has heat only while the hall calls', () => {
    const { heating } = follow(oneThermostat, 19, 21);
    let called = 0;
    heating[HALL]!.forEach((hall, s) => {
      if (hall > 0) called++;
      else expect(heating[BEDROOM]![s]).toBe(0);
    });
    expect(called).toBeGreaterThan(0.1 * heating[HALL]!.length);
    expect(called).toBeLessThan(0.9 * heating[HALL]!.length);
  });

  test('a warm hall leaves the bedroom cold; its own smart valve would not', () => {
    const gain = 40 * 15; // holds the hall at 20 °C by itself
    const cold = follow(oneThermostat, 19, 21, gain);
    expect(mean(cold.airTemperature[BEDROOM]!)).toBeCloseTo(5, 1);
    const own = {
      ...oneThermostat,
      thermostats: [oneThermostat.thermostats[0]!, PLAIN_THERMOSTAT],
    };
    const { callRoom: _, ...smart } = own;
    expect(mean(follow(smart, 19, 21, gain).airTemperature[BEDROOM]!)).toBeCloseTo(21, 6);
  });

  test('a plain valve settles below its setting by band times load over capacity', () => {
    // The hall calls all the time, because it never gets warm enough.
    const { airTemperature } = follow(oneThermostat, 60, 21);
    const perKelvin = 1500 / BAND;
    expect(mean(airTemperature[BEDROOM]!)).toBeCloseTo(
      (perKelvin * 21 + 40 * 5) / (perKelvin + 40),
      3,
    );
  });
});
