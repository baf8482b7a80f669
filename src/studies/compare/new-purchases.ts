import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';

/**
 * What a plan buys and the baseline does not: the same thing at the same price, lasting as long, is
 * bought in both, however often the scenario writes it down. Of two alike of which the baseline buys
 * one, one is left.
 */
export function newPurchases(had: readonly Purchase[], purchases: readonly Purchase[]): Purchase[] {
  const left = [...had];
  return purchases.filter((buy) => {
    const at = left.findIndex((other) => same(other, buy));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

const same = (a: Purchase, b: Purchase): boolean =>
  a.what === b.what && a.price === b.price && a.lastsYears === b.lastsYears;
