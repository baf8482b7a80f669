import { requireWithin } from '../units/require-within.ts';
import { chainUValue } from './chain.ts';
import type { Home } from './home.ts';

/** What the home loses per kelvin between its rooms and outdoors, by way out. [W/K] */
export interface HeatLoss {
  /** Walls, roofs and floors to outdoor air. */
  readonly elements: number;
  readonly panes: number;
  /** Floors on the ground, reduced because the ground is milder than the air in the heating season. */
  readonly ground: number;
  readonly air: number;
  /** Sum of elements, panes, ground and air. [W/K] */
  readonly total: number;
  /** Loss to neighbours of a given temperature; not in the total, because it does not follow the weather. */
  readonly neighbours: number;
}

/**
 * Heat-loss coefficient of the home, split by path: elements, panes, ground, air. [W/K]
 *
 * Elements between rooms and to nothing do not count. A floor counts with the U-value of its chain
 * (soil included), less what the ground's mildness saves over a heating season.
 *
 * @param airFlow  outdoor air through the home [m3/s], 0 to 100
 * @throws RangeError outside that range, or NaN
 */
export function heatLoss(home: Home, airFlow = 0): HeatLoss {
  requireWithin(airFlow, [0, 100], 'heatLoss: air flow', 'm3/s');
  let elements = 0;
  let ground = 0;
  let neighbours = 0;
  for (const { area, chain, far } of home.elements) {
    const loss = far.to === 'nothing' || far.to === 'room' ? 0 : area * chainUValue(chain);
    if (far.to === 'outdoors') elements += loss;
    if (far.to === 'ground') ground += loss * (1 - MILDNESS * (1 - far.damping));
    if (far.to === 'neighbour') neighbours += loss;
  }
  const panes = home.panes.reduce((sum, pane) => sum + pane.area * pane.uValue, 0);
  const air = airFlow * AIR_HEAT_CAPACITY;
  return { elements, panes, ground, air, total: elements + panes + ground + air, neighbours };
}

/** Volumetric heat capacity of air as handbooks have it, a third of a watt-hour. [J/(m3 K)] */
const AIR_HEAT_CAPACITY = 1200;

/**
 * How much milder the year's mean is than the heating season, as a share of what rooms are warmer
 * than outdoors then: (10 - 6)/(19 - 6) in a temperate place. Common practice. [-]
 */
const MILDNESS = 0.3;
