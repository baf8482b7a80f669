import type { Observer } from '../engine/record/trace.ts';
import { createAiringHours } from './air/airing-hours.ts';
import { createFreshAir } from './air/fresh-air.ts';
import { createRebounds } from './air/rebounds.ts';
import { createSpeciesLevels } from './air/species-levels.ts';
import { createSpeciesMeans } from './air/species-means.ts';
import { createArrivals } from './comfort/arrivals.ts';
import { createBlindHours } from './comfort/blind-hours.ts';
import { createFeltCold } from './comfort/felt-cold.ts';
import { createTimeOutsideBands } from './comfort/time-outside-bands.ts';
import { createColdSpots } from './damp/cold-spots.ts';
import { createCoolingUse } from './energy/cooling-measures.ts';
import { createDeviceUse } from './energy/device-use.ts';
import { createEnergyUse } from './energy/energy-use.ts';
import { createSourceLimits } from './energy/source-limits.ts';
import { createWinter } from './energy/winter.ts';
import { createHourlyMeans } from './hourly-means.ts';
import type { MeasuresSetup } from './measures-setup.ts';
import { monthEnds } from './month-ends.ts';
import { createOddRooms } from './notices/odd-rooms.ts';
import { createRoomSums } from './room-sums.ts';
import { createMonthlyClimate } from './series/monthly-climate.ts';

/** Whoever watches a run for its figures, by what it watches. */
export type Watchers = ReturnType<typeof createWatchers>;

/** Everybody who watches the run of one plan. Those of hours see the means of whole hours alone. */
export function createWatchers(setup: MeasuresSetup) {
  const { home, bands, prices, period, clock } = setup;
  const rooms = home.rooms.length;
  const months = monthEnds(period, clock);
  const winter = createWinter(clock, home.site.latitude);
  const ofHours = {
    coldSpots: createColdSpots(home, setup.mouldClasses),
    climate: createMonthlyClimate(home, period, months),
    levels: createSpeciesLevels(home, clock, period.hours),
  };
  const airing = createAiringHours(rooms);
  const ofSteps = {
    sums: createRoomSums(rooms),
    outside: createTimeOutsideBands(home, bands),
    arrivals: createArrivals(bands),
    energy: createEnergyUse(home, prices, winter, setup.activitiesBurnGas ?? false),
    used: createDeviceUse(home.devices.length, prices),
    cooled: createCoolingUse(home),
    limits: createSourceLimits(home),
    blinds: createBlindHours(home),
    airing,
    rebounds: createRebounds(rooms),
    carried: createSpeciesMeans(home),
    feltCold: createFeltCold(bands, winter),
    fresh: createFreshAir(home, months),
    odd: createOddRooms(home),
  };
  const hourly = [...Object.values(ofHours).map(({ observe }) => observe), airing.observeHour];
  const hours = createHourlyMeans(rooms, hourly, home.species.length);
  const all = [hours, ...Object.values(ofSteps)];
  const observe: Observer = (trace) => {
    for (const watcher of all) watcher.observe(trace);
  };
  return { ...ofHours, ...ofSteps, winter, observe };
}
