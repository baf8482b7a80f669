import { leakageAreaFromAch50 } from '../physics/airflow/blower-door.ts';
import { leakageCoefficients } from '../physics/airflow/leakage-coefficients.ts';
import { requireWithin } from '../units/require-within.ts';
import type { Leakage } from './home.ts';

/** What the weather's grip on a leaky shell depends on. */
export interface LeakageSite {
  /** Storeys of the building: 1, 2 or 3. */
  readonly storeys: number;
  /** 1 (no obstacles) to 5 (walled in by neighbours), ASHRAE basic model. */
  readonly shelterClass: number;
}

/** Air volume and exposed areas of the rooms, in the order of the home's rooms. */
export interface LeakageShell {
  /** Air volume of the home. [m3] */
  readonly volume: number;
  /** Envelope area of each room (see exposed-area). [m2] */
  readonly exposed: readonly number[];
  /** Equivalent area of each room's background vents, as declared by their makers. [m2] */
  readonly vents?: readonly number[];
}

/** Leakage given as a steady rate. [air changes per hour] */
export function leakageFromRate(rate: number, shell: LeakageShell): Leakage {
  requireWithin(rate, [0, 20], 'leakageFromRate: rate', '1/h');
  requireWithin(shell.volume, VOLUME, 'leakageFromRate: volume', 'm3');
  return {
    how: { by: 'rate', flow: (rate * shell.volume) / 3600 },
    share: shares(shell.exposed),
    ach50: null,
  };
}

/** Leakage given as a blower-door result at 50 Pa, vents closed. [air changes per hour] */
export function leakageFromAch50(ach50: number, shell: LeakageShell, site: LeakageSite): Leakage {
  requireWithin(ach50, [0, 100], 'leakageFromAch50: ach50', '1/h');
  requireWithin(shell.volume, VOLUME, 'leakageFromAch50: volume', 'm3');
  return byArea(leakageAreaFromAch50(ach50, shell.volume), ach50, shell, site);
}

/** Leakage given as effective leakage area at 4 Pa, vents not counted. [m2] */
export function leakageFromArea(area: number, shell: LeakageShell, site: LeakageSite): Leakage {
  requireWithin(area, [0, 2], 'leakageFromArea: effective leakage area', 'm2');
  requireWithin(shell.volume, VOLUME, 'leakageFromArea: volume', 'm3');
  return byArea(area, area / leakageAreaFromAch50(1, shell.volume), shell, site);
}

function byArea(cracks: number, ach50: number, shell: LeakageShell, site: LeakageSite): Leakage {
  const { stack, wind } = leakageCoefficients(site.storeys, site.shelterClass);
  const vents = (shell.vents ?? []).map((area) => {
    requireWithin(area, [0, 1], 'leakage: vent area', 'm2');
    return area * VENT_COEFFICIENT;
  });
  const area = cracks + vents.reduce((sum, vent) => sum + vent, 0);
  const share = shares(shell.exposed).map((s, room) =>
    area > 0 ? (s * cracks + (vents[room] ?? 0)) / area : s,
  );
  return { how: { by: 'area', area, stack, wind }, share, ach50 };
}

/** Each number as a share of all, equal shares where all are 0. */
function shares(exposed: readonly number[]): number[] {
  requireWithin(exposed.length, [1, 10_000], 'leakage: number of rooms', 'rooms');
  for (const area of exposed) requireWithin(area, [0, 1e5], 'leakage: exposed area', 'm2');
  const sum = exposed.reduce((total, area) => total + area, 0);
  return exposed.map((area) => (sum > 0 ? area / sum : 1 / exposed.length));
}

const VOLUME = [1, 100_000] as const; // [m3]
/**
 * Effective leakage area counts openings without contraction of the jet, equivalent area counts
 * sharp-edged holes; between them stands the discharge coefficient. Common practice. [-]
 */
const VENT_COEFFICIENT = 0.61;
