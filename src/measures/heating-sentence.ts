import type { Ledger } from '../engine/ledger.ts';
import { type HeatLoss, heatLoss } from '../home/heat-loss.ts';
import type { Element, Home } from '../home/home.ts';
import { figureText } from '../units/figure-text.ts';
import { JOULES_PER_KWH } from '../units/joules-per-kwh.ts';
import { booked } from './booked.ts';
import { differenceInWords, type Effect, mainReasons, needsReason } from './difference.ts';
import type { Climate } from './monthly-climate.ts';

/** The degree-day estimate and what it is held against. */
export interface HeatingBooks {
  readonly home: Home;
  readonly ledger: Ledger;
  /** Ledger rows of the heating season, and the climate over them. */
  readonly season: readonly number[];
  readonly climate: Climate;
  readonly loss: HeatLoss;
  /** [kWh] */
  readonly estimate: number;
  readonly simulated: number;
}

/**
 * How estimate and simulation agree and, where they do not, why.
 *
 * Every way heat goes is set beside what the estimate has for it over the season; what is left is
 * the estimate's single base temperature. So the reasons together make up the difference, and the
 * largest that pull the same way are named.
 */
export function heatingSentence(books: HeatingBooks): string {
  const { estimate, simulated } = books;
  if (simulated === 0) {
    return `Nothing was heated, so nothing stands beside the estimate of ${kwh(estimate)}.`;
  }
  const facts =
    `Heating by degree-days ${kwh(estimate)}, simulated ${kwh(simulated)}: ` +
    `${differenceInWords(estimate, simulated)}.`;
  if (!needsReason(estimate, simulated)) return facts;
  return `${facts} Mainly ${mainReasons(effects(books), estimate - simulated).join('; and ')}.`;
}

/** What the estimate counts as lost beyond what the simulation lost, way by way. [kWh] */
function effects({ home, ledger, season, climate, loss, estimate, simulated }: HeatingBooks) {
  const kelvinHours = ((climate.indoor - climate.outdoor) * climate.seconds) / JOULES_PER_KWH;
  const energy = ledger.energy;
  const lost = (values: Float64Array): number => -booked(values, season, ledger) / JOULES_PER_KWH;
  const ways: Effect[] = [
    way(
      kelvinHours * (kindLoss(home, 'wall') + kindLoss(home, 'roof')),
      lost(energy.walls) + lost(energy.roofs),
      (amount) =>
        `walls and roof lose ${amount} than it counts, ${wallReason(home, ledger, season)}`,
    ),
    way(
      kelvinHours * kindLoss(home, 'floor'),
      lost(energy.floors),
      (amount) => `floors lose ${amount} than it counts, because the ground has its own season`,
    ),
    way(
      kelvinHours * kindLoss(home, 'partition'),
      lost(energy.partitions),
      (amount) => `neighbours take ${amount} than it counts`,
    ),
    way(
      kelvinHours * loss.panes,
      lost(energy.panes),
      (amount) =>
        `panes lose ${amount} than it counts, because rooms with most glass are not at the mean`,
    ),
    way(
      kelvinHours * loss.air,
      lost(energy.leakage),
      (amount) =>
        `leakage takes ${amount} than it counts, because it follows the weather hour by hour`,
    ),
    way(0, lost(energy.openings), (amount) => `airing takes ${amount} than it counts`),
    way(0, lost(energy.fans), (amount) => `fans take ${amount} than it counts`),
    way(0, lost(energy.phaseChange), (amount) => `drying takes ${amount} than it counts`),
  ];
  const rest = estimate - simulated - ways.reduce((sum, { size }) => sum + size, 0);
  return [
    ...ways,
    {
      size: rest,
      words:
        `its single base temperature counts ${kwh(Math.abs(rest))} too ${rest > 0 ? 'much' : 'little'}, ` +
        'because sun and people give heat at hours that do not need it',
    },
  ];
}

function way(counted: number, lost: number, words: (amount: string) => string): Effect {
  const size = counted - lost;
  const amount = `${kwh(Math.abs(size))} ${size > 0 ? 'less' : 'more'}`;
  return { size, words: words(amount) };
}

/** Loss per kelvin of one kind of element, as the estimate counts it. [W/K] */
function kindLoss(home: Home, kind: Element['kind']): number {
  const elements = home.elements.filter((element) => element.kind === kind);
  return heatLoss({ ...home, elements, panes: [] }).total;
}

/** Unheated rooms are cooler than the mean the estimate uses; without any, it is the outer face. */
function wallReason(home: Home, ledger: Ledger, season: readonly number[]): string {
  const cool = home.rooms.filter((_, i) => booked(ledger.energy.heating, season, ledger, i) === 0);
  if (cool.length === 0) return 'because sun and sky reach their outer face';
  const names = cool.map((room) => room.name).join(', ');
  return `because rooms without heat (${names}) are not as warm as the mean`;
}

const kwh = (value: number): string => `${figureText(value, 0)} kWh`;
