import { type BandEdge, highKey } from '../../measures/band-hours.ts';
import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import { type CountedSpecies, countedSpecies } from '../../measures/counted-species.ts';
import { boughtForCooling } from '../../measures/energy/cooling-measures.ts';
import { devicesKwh, waterTaken } from '../../measures/energy/device-totals.ts';
import type { PlanMeasures, RoomMeasures } from '../../measures/plan-measures.ts';
import { sumText } from '../../units/sum-text.ts';

/** A figure of the home, plan by plan, as it is printed. */
export interface PlanRow {
  readonly label: string;
  readonly printed: readonly string[];
}

/** Figures of the home, those of devices, rules and rarer matters only where some plan has any. */
export function homeRows(plans: readonly PlanMeasures[]): PlanRow[] {
  const currency = plans[0]!.money.currency;
  const fuels = [...new Set(plans.flatMap((p) => Object.keys(p.heating.delivered_kwh)))];
  const figures: readonly Figure[] = [
    { label: `money a year [${currency}]`, of: (p) => p.money.total_per_year },
    { label: 'heat to rooms [kWh]', of: (p) => p.heating.useful_kwh },
    ...fuels.map((fuel) => ({
      label: `${fuel} for heat [kWh]`,
      of: (p: PlanMeasures) => p.heating.delivered_kwh[fuel] ?? 0,
    })),
    { label: 'heat, window open [kWh]', of: (p) => p.heating.with_window_open_kwh, rare: true },
    { label: 'removed by cooling [kWh]', of: (p) => p.cooling.removed_kwh, rare: true },
    { label: 'electricity for cooling [kWh]', of: boughtForCooling, rare: true },
    { label: 'appliances [kWh]', of: (p) => p.devices.electricity_kwh - devicesKwh(p) },
    { label: 'gas burnt by activities [kWh]', of: (p) => p.devices.gas_kwh, rare: true },
    { label: 'devices [kWh]', of: devicesKwh, rare: true },
    { label: 'water out by devices [kg]', of: waterTaken, rare: true },
    { label: 'carbon [kg CO2e]', of: (p) => p.carbon_kg },
    { label: 'outdoor air, heating season [L/s]', of: (p) => p.outdoor_air.l_per_s, decimals: 1 },
    { label: 'too cold, somebody in [room h]', of: occupied('temperature_low') },
    {
      label: 'of that, just came in [room h]',
      of: (p) => sum(p, (r) => r.cold_arrival_hours),
      rare: true,
    },
    { label: 'too warm, somebody in [room h]', of: occupied('temperature_high') },
    { label: 'too damp, any time [room h]', of: anyTime('humidity_high') },
    { label: 'too dry, any time [room h]', of: anyTime('humidity_low') },
    ...countedSpecies(plans).map(speciesFigure),
    {
      label: 'cold spots over 80 % [room h]',
      of: coldSpotHours,
    },
    {
      label: 'highest mould index [0 to 6]',
      of: (p) => highest(p, (r) => r.mould_index_peak),
      decimals: 2,
    },
    {
      label: 'condensation on panes [kg]',
      of: (p) => sum(p, (r) => r.condensation_kg),
      decimals: 1,
    },
    { label: 'alerts a week', of: (p) => p.alerts.per_week, decimals: 1, rare: true },
  ];
  return figures
    .filter(({ rare, of }) => !rare || plans.some((plan) => of(plan) !== 0))
    .map(({ label, of, decimals = 0 }) => ({
      label,
      printed: plans.map((plan) => sumText(of(plan), decimals)),
    }));
}

interface Figure {
  readonly label: string;
  readonly of: (plan: PlanMeasures) => number;
  readonly decimals?: number;
  /** Left out where it is 0 in every plan. */
  readonly rare?: true;
}

/** Pollutants are left out where there are none; what only tells of stale air is always shown. */
function speciesFigure({ name, symbol, role, counted }: CountedSpecies): Figure {
  const always = counted === 'any time';
  return {
    label: `${symbol} high, ${always ? 'any time' : 'somebody in'} [room h]`,
    of: (always ? anyTime : occupied)(highKey(name)),
    ...(role === 'pollutant' && { rare: true }),
  };
}

const occupied =
  (key: BandEdge) =>
  (plan: PlanMeasures): number =>
    roomHours(plan, 'outside_band_occupied_hours', key);
const anyTime =
  (key: BandEdge) =>
  (plan: PlanMeasures): number =>
    roomHours(plan, 'outside_band_hours', key);
const sum = ({ rooms }: PlanMeasures, of: (room: RoomMeasures) => number): number =>
  Object.values(rooms).reduce((total, room) => total + of(room), 0);
const highest = ({ rooms }: PlanMeasures, of: (room: RoomMeasures) => number): number =>
  Object.values(rooms).reduce((most, room) => Math.max(most, of(room)), 0);
