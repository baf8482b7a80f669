import type { BuildFacts } from '../build-facts.ts';
import type { RoomPlan } from '../room-plans.ts';

/** Height of each storey's floor above that of storey 0: the highest room below and the depth of a floor more. [m] */
export function elevations(
  plans: readonly RoomPlan[],
  { floorDepth }: Pick<BuildFacts, 'floorDepth'>,
): (storey: number) => number {
  const typical = Math.max(...plans.map(({ height }) => height));
  const rise = (storey: number): number => {
    const here = plans.filter((plan) => plan.storey === storey).map(({ height }) => height);
    return (here.length > 0 ? Math.max(...here) : typical) + floorDepth;
  };
  return (storey) => {
    let height = 0;
    for (let s = 0; s < storey; s++) height += rise(s);
    for (let s = storey; s < 0; s++) height -= rise(s);
    return height;
  };
}
