import { RESIDUAL_LIMIT } from '../../measures/notices/balance-notices.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { OwnCheckFailed } from './own-check-failed.ts';

/**
 * Refuse figures whose balances do not close: then the program is wrong, whatever the scenario says.
 *
 * @throws OwnCheckFailed naming each plan and balance that is off
 */
export function ownCheck(plans: readonly PlanMeasures[]): void {
  const faults = plans.flatMap(({ plan, balance }) =>
    Object.entries(balance)
      .filter(([, residual]) => !(Math.abs(residual) <= RESIDUAL_LIMIT))
      .map(([name, residual]) => `${plan}: ${name.replace('_', ' ')} ${residual.toExponential(1)}`),
  );
  if (faults.length === 0) return;
  throw new OwnCheckFailed(
    `A balance of the simulation does not close to ${RESIDUAL_LIMIT}, so do not trust these figures:\n` +
      `${faults.map((fault) => `  ${fault}\n`).join('')}` +
      'This is a fault of roombalance, not of your files.',
  );
}
