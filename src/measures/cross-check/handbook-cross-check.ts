import type { Ledger } from '../../engine/ledger/ledger.ts';
import { type HeatLoss, heatLoss } from '../../home/heat-loss.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import type { HeatingSeason } from '../energy/heating-season.ts';
import { ledgerSum } from '../ledger-sum.ts';
import type { MeasuresSetup } from '../measures-setup.ts';
import type { HandbookCrossCheck } from '../plan-measures.ts';
import type { Climate, MonthlyClimate } from '../series/monthly-climate.ts';
import { differencePct } from './difference.ts';
import { type HeatingBooks, heatingSentence } from './heating-sentence.ts';
import { infiltrationSentence } from './infiltration-sentence.ts';
import { vapourCrossCheck } from './vapour-cross-check.ts';

/** The handbook's estimate for the same home, and one sentence for each on how the two agree. */
export interface CrossCheck {
  readonly figures: HandbookCrossCheck;
  readonly notices: readonly Notice[];
}

/**
 * Heating by degree-days, leakage by ach50/20, vapour by G/(nV), each beside the simulation.
 *
 * - Heat-loss coefficient: elements, panes and ground of the home, and air at ach50/20 (where that
 *   is not known: at the simulation's mean leakage).
 * - Base temperature: mean air temperature of all rooms, by volume, minus mean gains (people,
 *   appliances, devices, sun) over the heat-loss coefficient, both over the heating season.
 * - Degree-days: by daily means, over the whole period.
 * - Difference: estimate minus simulation, over simulation.
 *
 * Source: balance-point method as in CIBSE TM41 (2006), from memory.
 */
export function handbookCrossCheck(
  home: Home,
  ledger: Ledger,
  climate: MonthlyClimate,
  at: Pick<MeasuresSetup, 'weather' | 'period'>,
  { rows: season }: HeatingSeason,
): CrossCheck {
  const volume = home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const every = ledger.months.map((_, row) => row);
  const year = climate.over(every);
  const inSeason = climate.over(season);
  const ach = (year.infiltration * 3600) / volume;
  const rule = home.leakage.ach50 === null ? null : home.leakage.ach50 / 20;
  const loss = heatLoss(home, ((rule ?? ach) * volume) / 3600);
  const gains = GAINS.reduce(
    (sum, term) => sum + ledgerSum(ledger.energy[term], season, ledger),
    0,
  );
  const base = baseTemperature(inSeason, gains, loss);
  const degreeDays = climate.degreeDays(base);
  const estimate = (loss.total * degreeDays * 24) / 1000;
  const simulated = ledgerSum(ledger.energy.heating, every, ledger) / JOULES_PER_KWH;
  const books: HeatingBooks = {
    home,
    ledger,
    season,
    climate: inSeason,
    loss,
    estimate,
    simulated,
  };
  const vapour = vapourCrossCheck(ledger, season, inSeason, rule === null ? null : rule * volume);
  return {
    figures: {
      heat_loss_coefficient_w_per_k: loss.total,
      degree_days_k_d: degreeDays,
      degree_day_heating_kwh: estimate,
      difference_pct: differencePct(estimate, simulated),
      infiltration_ach_mean: ach,
      ach50_over_20: rule,
      vapour_excess_g_per_m3: vapour.excess,
      humidity_class: vapour.humidityClass,
    },
    notices: [
      { id: 'handbook-cross-check-heating', text: heatingSentence(books) },
      {
        id: 'handbook-cross-check-infiltration',
        text: infiltrationSentence(home, ach, year, at),
      },
      { id: 'handbook-cross-check-vapour', text: vapour.sentence },
    ],
  };
}

function baseTemperature(season: Climate, gains: number, loss: HeatLoss): number {
  if (season.seconds === 0 || loss.total === 0) return season.indoor;
  return season.indoor - gains / season.seconds / loss.total;
}

const GAINS = ['people', 'appliances', 'devices', 'sun'] as const;
