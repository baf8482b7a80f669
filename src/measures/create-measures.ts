import type { Observer } from '../engine/record/trace.ts';
import type { Run } from '../engine/run.ts';
import type { Notice } from '../home/notices.ts';
import { airingMeasures } from './air/airing-measures.ts';
import { freshAirNotices } from './air/fresh-air-notices.ts';
import { stoveCautions } from './air/stove-hours.ts';
import { alertMeasures } from './alert-measures.ts';
import { openBlinds } from './comfort/blind-hours.ts';
import { handbookCrossCheck } from './cross-check/handbook-cross-check.ts';
import { coolingMeasures } from './energy/cooling-measures.ts';
import { devicesMeasures } from './energy/device-measures.ts';
import { energyBill } from './energy/energy-bill.ts';
import { heatingMeasures, priceOfHeat } from './energy/heating-measures.ts';
import { heatingSeason } from './energy/heating-season.ts';
import { moneyMeasures } from './energy/money-measures.ts';
import type { MeasuresSetup } from './measures-setup.ts';
import { balanceNotices, balanceOf } from './notices/balance-notices.ts';
import { idleCooling, idleNotices } from './notices/idle-notices.ts';
import { ruleNotices } from './notices/rule-notices.ts';
import { shutWindows } from './notices/shut-windows.ts';
import { stepNotices } from './notices/step-notices.ts';
import type { PlanMeasures } from './plan-measures.ts';
import { roomMeasures } from './room-measures.ts';
import { createWatchers, type Watchers } from './watchers.ts';
import { isWholeYears } from './years-in.ts';

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
  const watched = createWatchers(setup);
  return { observe: watched.observe, finish: (run) => finish(setup, watched, run) };
}

function finish(setup: MeasuresSetup, watched: Watchers, run: Run): PlanMeasures {
  const { home, prices, period } = setup;
  const { ledger, control } = run;
  const uses = watched.energy.result();
  const bill = energyBill(uses, prices, setup.clock, period, watched.winter);
  const season = heatingSeason(watched.climate, ledger.months.length);
  const opinion = handbookCrossCheck(home, ledger, watched.climate, setup, season);
  const balance = balanceOf(ledger);
  const air = watched.fresh.result(ledger, watched.climate, season);
  const totals = home.rooms.map((_, i) => watched.sums.result(i));
  const removed = home.rooms.map((_, i) => watched.cooled.removed(i));
  const heating = heatingMeasures(totals, uses, setup.heatsByPresence ?? false);
  const devices = devicesMeasures(home, uses, watched.used.result, control, air.stoveHours);
  const alerts = alertMeasures(control, period.hours);
  const blinds = watched.blinds.result();
  const price = priceOfHeat(uses, heating.useful_kwh);
  const rooms = Object.fromEntries(
    home.rooms.map(({ name }, i) => [name, roomMeasures(watched, i, air.rooms[i]!)]),
  );
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
    blinds,
    devices,
    money: moneyMeasures(setup, uses, bill),
    carbon_kg: bill.carbon,
    species: watched.carried.outdoors(),
    rooms,
    outdoor_air: air.flows.home,
    outdoor_air_share_by_storey: air.flows.shareByStorey,
    air_flows: air.flows.between,
    airing: airingMeasures(
      ledger,
      season,
      price,
      watched.airing.result(),
      watched.rebounds.result(),
    ),
    alerts,
    balance,
    handbook_cross_check: opinion.figures,
    assumed: setup.assumed,
    cautions: [...setup.cautions, ...stoveCautions(home, air.stoveHours)],
    notices: distinct([
      ...balanceNotices(balance),
      ...watched.odd.notices(),
      ...run.notices,
      ...setup.weather.notes,
      ...bill.notices,
      ...partYear(period.hours),
      ...watched.limits.notices(),
      ...idleNotices(heating, devices),
      ...ruleNotices(run.control?.rules ?? []),
      ...idleCooling(home, removed),
      ...openBlinds(blinds),
      ...stepNotices(setup.stepSensitive ?? NOT_SENSITIVE, home, run, devices.detail),
      ...shutWindows(
        home,
        totals.map(({ windowOpenHours }) => windowOpenHours),
        period.hours,
      ),
      ...opinion.notices,
      ...freshAirNotices(home, air, rooms),
    ]),
  };
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
