import type { Observer, TraceView } from '../engine/record/trace.ts';
import type { Run } from '../engine/run.ts';
import type { Notice } from '../home/notices.ts';
import { createAiringHours } from './air/airing-hours.ts';
import { airingMeasures } from './air/airing-measures.ts';
import { createFreshAir, type FreshAir } from './air/fresh-air.ts';
import { freshAirNotices } from './air/fresh-air-notices.ts';
import { createRebounds } from './air/rebounds.ts';
import { createSpeciesLevels } from './air/species-levels.ts';
import { createSpeciesMeans } from './air/species-means.ts';
import { stoveCautions } from './air/stove-hours.ts';
import { alertMeasures } from './alert-measures.ts';
import { createArrivals } from './comfort/arrivals.ts';
import { createBlindHours, openBlinds } from './comfort/blind-hours.ts';
import { createFeltCold } from './comfort/felt-cold.ts';
import { createTimeOutsideBands } from './comfort/time-outside-bands.ts';
import { handbookCrossCheck } from './cross-check/handbook-cross-check.ts';
import { createColdSpots } from './damp/cold-spots.ts';
import { coolingMeasures, createCoolingUse } from './energy/cooling-measures.ts';
import { devicesMeasures } from './energy/device-measures.ts';
import { createDeviceUse } from './energy/device-use.ts';
import { energyBill } from './energy/energy-bill.ts';
import { createEnergyUse } from './energy/energy-use.ts';
import { heatingMeasures, priceOfHeat } from './energy/heating-measures.ts';
import { heatingSeason } from './energy/heating-season.ts';
import { purchaseCostPerYear } from './energy/purchase-cost-per-year.ts';
import { createSourceLimits } from './energy/source-limits.ts';
import { createWinter } from './energy/winter.ts';
import { createHourlyMeans } from './hourly-means.ts';
import type { MeasuresSetup } from './measures-setup.ts';
import { monthEnds } from './month-ends.ts';
import { balanceNotices, balanceOf } from './notices/balance-notices.ts';
import { idleCooling, idleNotices } from './notices/idle-notices.ts';
import { createOddRooms } from './notices/odd-rooms.ts';
import { shutWindows } from './notices/shut-windows.ts';
import { stepNotices } from './notices/step-notices.ts';
import type { PlanMeasures, RoomMeasures } from './plan-measures.ts';
import { roomMeasures } from './room-measures.ts';
import { createRoomSums } from './room-sums.ts';
import { createMonthlyClimate } from './series/monthly-climate.ts';
import { isWholeYears, yearsIn } from './years-in.ts';

/** Watches one run and computes the figures described in docs/quantities.md from it. */
export interface Measures {
  /** Observer to hand to the run; it keeps none of the arrays it is shown. */
  readonly observe: Observer;
  /** Compute the figures; call once, after the run. */
  finish(run: Run): PlanMeasures;
}

/**
 * Measures of one plan: they read the trace and the ledger of a run, never how it was stepped.
 */
export function createMeasures(setup: MeasuresSetup): Measures {
  const { home, bands, prices, period } = setup;
  const rooms = home.rooms.length;
  const months = monthEnds(period, setup.clock);
  const sums = createRoomSums(rooms);
  const outside = createTimeOutsideBands(home, bands);
  const coldSpots = createColdSpots(home, setup.mouldClasses);
  const arrivals = createArrivals(bands);
  const winter = createWinter(setup.clock, home.site.latitude);
  const energy = createEnergyUse(home, prices, winter, setup.activitiesBurnGas ?? false);
  const used = createDeviceUse(home.devices.length, prices);
  const cooled = createCoolingUse(home);
  const limits = createSourceLimits(home);
  const blinds = createBlindHours(home);
  const airing = createAiringHours(rooms);
  const rebounds = createRebounds(rooms);
  const carried = createSpeciesMeans(home);
  const fresh = createFreshAir(home, months);
  const odd = createOddRooms(home);
  const climate = createMonthlyClimate(home, period, months);
  const levels = createSpeciesLevels(home, setup.clock, period.hours);
  const feltCold = createFeltCold(bands, winter);
  const hourly = [coldSpots.observe, climate.observe, airing.observeHour, levels.observe];
  const hours = createHourlyMeans(rooms, hourly, home.species.length);
  const watchers = [
    hours,
    sums,
    outside,
    arrivals,
    energy,
    used,
    cooled,
    limits,
    blinds,
    airing,
    rebounds,
    carried,
    feltCold,
    fresh,
    odd,
  ];

  function observe(trace: TraceView): void {
    for (const watcher of watchers) watcher.observe(trace);
  }

  const ofRoom = (room: number, air: FreshAir): RoomMeasures =>
    roomMeasures(
      sums.result(room),
      cooled.removed(room),
      levels.room(room),
      outside.result(room),
      { hours: feltCold.hours(room), perWinterDay: feltCold.perWinterDay(room) },
      coldSpots.result(room),
      arrivals.result(room),
      air.rooms[room]!,
    );

  function finish(run: Run): PlanMeasures {
    const uses = energy.result();
    const bill = energyBill(uses, prices, setup.clock, period, winter);
    const purchaseCost = purchaseCostPerYear(setup.purchases, setup.discountRate);
    const season = heatingSeason(climate, run.ledger.months.length);
    const opinion = handbookCrossCheck(home, run.ledger, climate, setup, season);
    const balance = balanceOf(run.ledger);
    const air = fresh.result(run.ledger, climate, season);
    const totals = home.rooms.map((_, i) => sums.result(i));
    const heating = heatingMeasures(totals, uses, setup.heatsByPresence ?? false);
    const windowHours = totals.map(({ windowOpenHours }) => windowOpenHours);
    const removed = home.rooms.map((_, i) => cooled.removed(i));
    const devices = devicesMeasures(home, uses, used.result, run.control, air.stoveHours);
    const alerts = alertMeasures(run.control, period.hours);
    const ofRooms = Object.fromEntries(home.rooms.map(({ name }, i) => [name, ofRoom(i, air)]));
    const price = priceOfHeat(uses, heating.useful_kwh);
    return {
      scenario: setup.scenario,
      plan: setup.plan,
      period: {
        from: instant(period.start),
        to: instant(period.start + period.hours * 3600),
        hours: period.hours,
      },
      heating,
      cooling: coolingMeasures(home, removed, uses),
      blinds: blinds.result(),
      devices,
      money: {
        currency: prices.currency,
        energy: bill.total,
        winter_energy: bill.winter,
        by_fuel: bill.byFuel,
        by_use: Object.fromEntries(
          uses.flatMap(({ fuel, costByUse }) => (costByUse === null ? [] : [[fuel, costByUse]])),
        ),
        purchase_cost_per_year: purchaseCost,
        total_per_year: bill.total / yearsIn(period.hours) + purchaseCost,
      },
      carbon_kg: bill.carbon,
      species: carried.outdoors(),
      rooms: ofRooms,
      outdoor_air: air.flows.home,
      outdoor_air_share_by_storey: air.flows.shareByStorey,
      air_flows: air.flows.between,
      airing: airingMeasures(run.ledger, season, price, airing.result(), rebounds.result()),
      alerts,
      balance,
      handbook_cross_check: opinion.figures,
      assumed: setup.assumed,
      cautions: [...setup.cautions, ...stoveCautions(home, air.stoveHours)],
      notices: distinct([
        ...balanceNotices(balance),
        ...odd.notices(),
        ...run.notices,
        ...setup.weather.notes,
        ...bill.notices,
        ...partYear(period.hours),
        ...limits.notices(),
        ...idleNotices(heating, devices, alerts),
        ...idleCooling(home, removed),
        ...openBlinds(blinds.result()),
        ...stepNotices(setup.stepSensitive ?? NOT_SENSITIVE, home, run, devices.detail),
        ...shutWindows(home, windowHours, period.hours),
        ...opinion.notices,
        ...freshAirNotices(home, air, ofRooms),
      ]),
    };
  }

  return { observe, finish };
}

/** Money a year from anything but whole years is an extrapolation, and says so. */
function partYear(hours: number): Notice[] {
  if (isWholeYears(hours)) return [];
  const text =
    `The period is ${Math.round(hours / 24)} days long. Energy is what that period cost; ` +
    'the total a year scales it by the calendar alone, whatever the season.';
  return [{ id: 'not-a-year', text }];
}

const distinct = (remarks: readonly Notice[]): Notice[] => [
  ...new Map(remarks.map((notice) => [`${notice.id} ${notice.text}`, notice])).values(),
];

const NOT_SENSITIVE = { devices: [], byClock: [], byHabit: [] };

const instant = (utc: number): string => new Date(utc * 1000).toISOString().replace('.000Z', 'Z');
