import type { Ledger } from '../../engine/ledger/ledger.ts';
import type { Notice } from '../../home/notices.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** Greatest residual of a balance, relative to throughput, that counts as closed. [-] */
export const RESIDUAL_LIMIT = 1e-6;

/** The balances of a run as the figures name them. */
export function balanceOf({ residual }: Ledger): PlanMeasures['balance'] {
  return {
    energy_residual: residual.energy,
    water_residual: residual.water,
    air_residual: residual.air,
    pollutant_residual: residual.species.reduce(worse, 0),
  };
}

/** One notice for every balance that does not close. A residual that is not a number does not. */
export function balanceNotices(balance: PlanMeasures['balance']): Notice[] {
  return Object.entries(balance)
    .filter(([, residual]) => !(residual <= RESIDUAL_LIMIT))
    .map(([key, residual]) => ({
      id: `error-of-ours-${key.replace('_residual', '-balance')}`,
      text:
        `This is an error of ours: the ${key.replace('_residual', '')} balance does not close. ` +
        `The residual is ${residual} of throughput, ${RESIDUAL_LIMIT} is the most we accept. ` +
        'Do not rely on the figures of this plan.',
    }));
}

/** The larger of two residuals; one that is not a number is worse than any. */
const worse = (a: number, b: number): number => (a >= b || Number.isNaN(a) ? a : b);
