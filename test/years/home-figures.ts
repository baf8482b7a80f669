import { devicesKwh } from '../../src/measures/energy/device-totals.ts';
import { createHourlyMeans } from '../../src/measures/hourly-means.ts';
import { vapourDensity } from '../../src/physics/moist-air/vapour-density.ts';
import { demoPlan, demoRun } from './demo-run.ts';

/** What surveys report of a home, in one year of a demonstration home. */
export interface HomeFigures {
  /** Fuel, wood and electricity for heat, and all electricity of activities. [kWh] */
  readonly heatFuel: number;
  readonly electricity: number;
  /** Mean air temperatures on days of 3 to 7 °C outdoors, by room. [°C] */
  readonly atFive: readonly number[];
  /** Mean over rooms by volume of vapour indoors beyond outdoors, on days of at most 5 °C. [g/m3] */
  readonly vapourExcess: number;
  /** Mean CO2 from 23:00 to 7:00 UTC, October to March, by room. [ppm] */
  readonly nightCo2: readonly number[];
  /** Median PM2.5 of the year, by room. [µg/m3] */
  readonly particles: readonly number[];
  readonly rooms: readonly string[];
}

/** Run a plan of a demonstration home and gather what surveys report. */
export function homeFigures(file: string, plan: string, set: readonly string[] = []): HomeFigures {
  const hours: Hour[] = [];
  const { home } = demoPlan(file, plan, set);
  const [co2, pm25] = ['co2', 'pm25'].map((own) => home.species.findIndex((s) => s.name === own));
  const watch = createHourlyMeans(
    home.rooms.length,
    [
      ({ outdoorTemperature, outdoorVapourPressure, airTemperature, vapourPressure, species }) => {
        const outside = vapourDensity(outdoorVapourPressure, outdoorTemperature);
        hours.push({
          ...{ outdoor: outdoorTemperature, temperature: [...airTemperature] },
          excess: [...vapourPressure].map((p, i) => vapourDensity(p, airTemperature[i]!) - outside),
          ...{ co2: [...species[co2!]!], particles: [...species[pm25!]!] },
        });
      },
    ],
    home.species.length,
  );
  const { measures, plan: prepared } = demoRun(file, plan, set, [watch.observe]);
  const names = prepared.home.rooms.map(({ name }) => name);
  const volumes = prepared.home.rooms.map(({ volume }) => volume);
  const whole = volumes.reduce((a, b) => a + b, 0);
  const days = Array.from({ length: hours.length / 24 }, (_, d) =>
    hours.slice(24 * d, 24 * d + 24),
  );
  const outdoors = (day: readonly Hour[]): number => mean(day.map((h) => h.outdoor));
  const mild = days.filter((day) => Math.abs(outdoors(day) - 5) <= 2).flat();
  const cold = days.filter((day) => outdoors(day) <= 5).flat();
  const nights = hours.filter(
    (_, k) => (k < 90 * 24 || k >= 273 * 24) && (k % 24 < 7 || k % 24 === 23),
  );
  const byVolume = (value: (room: number) => number): number =>
    volumes.reduce((sum, v, i) => sum + (v / whole) * value(i), 0);
  const fuel = Object.values(measures.heating.delivered_kwh).reduce((a, b) => a + b, 0);
  return {
    heatFuel: fuel,
    electricity: measures.devices.electricity_kwh - devicesKwh(measures),
    atFive: names.map((_, i) => mean(mild.map((h) => h.temperature[i]!))),
    vapourExcess: mean(cold.map((h) => byVolume((i) => h.excess[i]!))),
    nightCo2: names.map((_, i) => mean(nights.map((h) => h.co2[i]!))),
    particles: names.map((_, i) => median(hours.map((h) => h.particles[i]!))),
    rooms: names,
  };
}

interface Hour {
  readonly outdoor: number;
  readonly temperature: readonly number[];
  readonly excess: readonly number[];
  readonly co2: readonly number[];
  readonly particles: readonly number[];
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
