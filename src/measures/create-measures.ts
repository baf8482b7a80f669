import type { Run } from '../engine/run.ts';
import type { Observer, TraceStretch } from '../engine/trace.ts';
import type { Remark } from '../home/remarks.ts';
import { balanceNotices, balanceOf } from './balance-notices.ts';
import { createColdSpots } from './cold-spots.ts';
import { energyBill } from './energy-bill.ts';
import { createEnergyUse, type FuelUse } from './energy-use.ts';
import { createHourlyMeans } from './hourly-means.ts';
import type { MeasuresSetup } from './measures-setup.ts';
import { createMonthlyClimate } from './monthly-climate.ts';
import { owningPerYear } from './owning-per-year.ts';
import type { PlanMeasures, RoomMeasures } from './plan-measures.ts';
import { createRoomSums } from './room-sums.ts';
import { secondOpinion } from './second-opinion.ts';
import { createTimeOutsideBands } from './time-outside-bands.ts';
import { yearsIn } from './years-in.ts';

/** Watches one run and makes the figures of section "figures" of the documentation from it. */
export interface Measures {
  /** Hand this to the run. It keeps nothing of the stretches it sees. */
  readonly observe: Observer;
  /** Call once, after the last stretch. */
  finish(run: Run): PlanMeasures;
}

/**
 * Measures of one plan. They read only the trace and the ledger, so that a measured log laid out as
 * a trace is measured in the same way.
 */
export function createMeasures(setup: MeasuresSetup): Measures {
  const { home, bands, prices, period } = setup;
  const sums = createRoomSums(home.rooms.length);
  const outside = createTimeOutsideBands(home, bands);
  const coldSpots = createColdSpots(home, setup.mouldClasses);
  const energy = createEnergyUse(home, prices);
  const climate = createMonthlyClimate(home, period);
  const hours = createHourlyMeans(home.rooms.length, [coldSpots.observe, climate.observe]);

  function observe(stretch: TraceStretch): void {
    sums.observe(stretch);
    outside.observe(stretch);
    energy.observe(stretch);
    hours.observe(stretch);
  }

  function roomMeasures(room: number): RoomMeasures {
    const own = sums.result(room);
    const out = outside.result(room);
    const spot = coldSpots.result(room);
    return {
      heating_kwh: own.heatingKwh,
      mean_temperature_c: own.meanTemperature,
      mean_relative_humidity_pct: own.meanRelativeHumidity,
      outside_band_hours: out.all,
      outside_band_occupied_hours: out.occupied,
      degree_hours_below: out.degreeHoursBelow,
      degree_hours_above: out.degreeHoursAbove,
      cold_spot_hours_above_80_pct: spot.hoursAbove80,
      mould_index_peak: spot.mouldPeak,
      mould_index_end: spot.mouldEnd,
      condensation_hours: own.condensationHours,
      condensation_kg: own.condensationKg,
      window_open_hours: own.windowOpenHours,
    };
  }

  function finish(run: Run): PlanMeasures {
    const uses = energy.result();
    const bill = energyBill(uses, prices, setup.clock, period);
    const owning = owningPerYear(setup.buys, setup.discountRate);
    const opinion = secondOpinion(home, run.ledger, climate, setup.weather);
    const balance = balanceOf(run.ledger);
    const rooms = home.rooms.map((room, i) => [room.name, roomMeasures(i)] as const);
    return {
      scenario: setup.scenario,
      plan: setup.plan,
      period: {
        from: instant(period.start),
        to: instant(period.start + period.hours * 3600),
        hours: period.hours,
      },
      heating: {
        useful_kwh: rooms.reduce((sum, [, room]) => sum + room.heating_kwh, 0),
        delivered_kwh: deliveredHeat(uses, home.sources),
      },
      devices: {
        electricity_kwh: uses.reduce((sum, { otherKwh }) => sum + otherKwh, 0),
        by_device: {},
      },
      money: {
        currency: prices.currency,
        energy: bill.total,
        by_fuel: bill.byFuel,
        owning_per_year: owning,
        total_per_year: bill.total / yearsIn(period.hours) + owning,
      },
      carbon_kg: bill.carbon,
      rooms: Object.fromEntries(rooms),
      alerts: { fired: 0, someone_home: 0, acted_on: 0, per_week: 0, by_rule: {} },
      balance,
      second_opinion: opinion.figures,
      assumed: setup.assumed,
      cautions: setup.cautions,
      notices: distinct([
        ...balanceNotices(balance),
        ...run.notices,
        ...setup.weather.notes,
        ...bill.notices,
        ...partYear(period.hours),
        ...opinion.notices,
      ]),
    };
  }

  return { observe, finish };
}

/** Fuel drawn for heat; a fuel that only appliances draw is not listed. */
function deliveredHeat(
  uses: readonly FuelUse[],
  sources: MeasuresSetup['home']['sources'],
): Record<string, number> {
  const heating = uses.filter(({ fuel }) => sources.some((source) => source.fuel === fuel));
  return Object.fromEntries(heating.map(({ fuel, heatKwh }) => [fuel, heatKwh]));
}

/** Money a year from less or more than a year is an extrapolation, and says so. */
function partYear(hours: number): Remark[] {
  if (yearsIn(hours) === 1) return [];
  const text =
    `The period is ${Math.round(hours / 24)} days long. Energy is what that period cost; ` +
    'the total a year scales it by the calendar alone, whatever the season.';
  return [{ id: 'not-a-year', text }];
}

const distinct = (remarks: readonly Remark[]): Remark[] => [
  ...new Map(remarks.map((remark) => [`${remark.id} ${remark.text}`, remark])).values(),
];

const instant = (utc: number): string => new Date(utc * 1000).toISOString().replace('.000Z', 'Z');
