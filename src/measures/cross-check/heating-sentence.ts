import type { Ledger } from '../../engine/ledger/ledger.ts';
import { type HeatLoss, heatLoss } from '../../home/heat-loss.ts';
import type { Element, Home } from '../../home/home.ts';
import { figureText } from '../../units/figure-text.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import { ledgerSum } from '../ledger-sum.ts';
import type { Climate } from '../series/monthly-climate.ts';
import {
  becauseOf,
  differenceInWords,
  type Effect,
  LEAST_KWH,
  mainReasons,
  needsReason,
} from './difference.ts';

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
 * Every way heat goes is set beside what the estimate has for it over the season. What is left comes
 * from counting day by day (a day milder than the base counts 0 whatever it leaves over, and cool
 * days out of season count too) or is heat used out of season. So the reasons together make up the
 * difference, and the largest that pull the same way are named.
 */
export function heatingSentence(books: HeatingBooks): string {
  const { estimate, simulated } = books;
  if (simulated === 0) {
    return `Heating: nothing was heated; degree-days would ask for ${kwh(estimate)}.`;
  }
  const facts =
    `Heating: degree-days give ${kwh(estimate)}, the simulation ${kwh(simulated)}; ` +
    `${differenceInWords(estimate, simulated, LEAST_KWH)}.`;
  if (!needsReason(estimate, simulated, LEAST_KWH)) return facts;
  return `${facts} ${becauseOf(mainReasons(effects(books), estimate - simulated))}`;
}

/** What the estimate counts as lost beyond what the simulation lost, way by way. [kWh] */
function effects({ home, ledger, season, climate, loss, estimate, simulated }: HeatingBooks) {
  const kelvinHours = ((climate.indoor - climate.outdoor) * climate.seconds) / JOULES_PER_KWH;
  const energy = ledger.energy;
  const lost = (values: Float64Array): number =>
    -ledgerSum(values, season, ledger) / JOULES_PER_KWH;
  const leakier = (1200 * climate.infiltration) / loss.air;
  const ways: Effect[] = [
    way(
      'walls and roof lose',
      kelvinHours * (kindLoss(home, 'wall') + kindLoss(home, 'roof')),
      lost(energy.walls) + lost(energy.roofs),
      (less) => wallReason(home, ledger, season, less),
    ),
    way(
      'floors lose',
      kelvinHours * kindLoss(home, 'floor'),
      lost(energy.floors),
      () => ', because the ground has seasons of its own',
    ),
    way(
      'neighbours take',
      kelvinHours * kindLoss(home, 'partition'),
      lost(energy.partitions),
      () => '',
    ),
    way(
      'panes lose',
      kelvinHours * loss.panes,
      lost(energy.panes),
      (less) => `, because rooms with much glass are ${less ? 'cooler' : 'warmer'} than the mean`,
    ),
    way('leakage takes', kelvinHours * loss.air, lost(energy.leakage), (less) =>
      leakier > 1 === less
        ? `, because ${less ? 'the rooms that leak most are cooler than the mean' : 'it is strongest when it is cold'}`
        : `, because ${less ? 'less' : 'more'} air leaks in here than the rule of thumb has it`,
    ),
    way('open windows take', 0, lost(energy.openings), () => ''),
    way('fans take', 0, lost(energy.fans) + lost(energy.extracts), () => ''),
    way('the draught of a stove takes', 0, lost(energy.draught), () => ''),
    way('drying takes', 0, lost(energy.phaseChange), () => ''),
  ];
  const rest = estimate - simulated - ways.reduce((sum, { size }) => sum + size, 0);
  const clipped =
    `it counts ${kwh(rest)} too much, because mild days leave warmth over, in walls or as warmer ` +
    'rooms, that it does not set against cool ones';
  const offSeason = `${kwh(-rest)} of heat outside the heating season are not in it`;
  return [...ways, { size: rest, words: rest > 0 ? clipped : offSeason }];
}

/**
 * One way for heat to go.
 *
 * @param counted  what the estimate has for it, and what the simulation lost that way [kWh]
 * @param reason   why, by whether less was lost than counted
 */
function way(
  what: string,
  counted: number,
  lost: number,
  reason: (less: boolean) => string,
): Effect {
  const size = counted - lost;
  const amount = `${kwh(Math.abs(size))} ${size > 0 ? 'less' : 'more'}`;
  return { size, words: `${what} ${amount} than it counts${reason(size > 0)}` };
}

/** Loss per kelvin of one kind of element, as the estimate counts it. [W/K] */
function kindLoss(home: Home, kind: Element['kind']): number {
  const elements = home.elements.filter((element) => element.kind === kind);
  return heatLoss({ ...home, elements, panes: [] }).total;
}

/** Unheated rooms are cooler than the mean the estimate uses; without any, it is the outer face. */
function wallReason(home: Home, ledger: Ledger, season: readonly number[], less: boolean): string {
  if (!less) return ', because rooms with much outer wall are warmer than the mean';
  const cool = home.rooms.filter(
    (_, i) => ledgerSum(ledger.energy.heating, season, ledger, i) === 0,
  );
  if (cool.length === 0) return ', because the sun warms their outer faces';
  const names = cool.map((room) => room.name).join(', ');
  return `, because rooms without heat (${names}) are not as warm as the mean`;
}

const kwh = (value: number): string => `${figureText(value, 0)} kWh`;
