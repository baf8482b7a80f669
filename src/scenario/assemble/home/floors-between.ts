import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/** How floors of drawn rooms lie over rooms of the storey below. */
export interface FloorsBetween {
  /** What of an upper room's floor is what of a lower room's ceiling. */
  readonly pieces: readonly FloorPiece[];
  /** Floors, or parts of them, that lie over no room of the home though the rooms below end there. */
  readonly hanging: readonly LeftOver[];
  /** Ceilings, or parts of them, that no room of the home lies over. */
  readonly bare: readonly LeftOver[];
}

export interface FloorPiece {
  readonly upper: RoomPlan;
  readonly lower: RoomPlan;
  /** [m2] */
  readonly area: number;
}

interface LeftOver {
  readonly room: string;
  /** What is left of the floor or ceiling, and all of it. [m2] */
  readonly area: number;
  readonly whole: number;
}

/**
 * An upper room lies over one lower room: the one that is named, else the one with most ceiling left.
 * What of its floor is more than that ceiling has left lies over what others leave, the largest first. Rooms with
 * elements of their own are left alone, and so is what a room says hangs over outdoors.
 */
export function floorsBetween(plans: readonly RoomPlan[], defaults: Defaults): FloorsBetween {
  const drawn = plans.filter(({ data }) => data.elements === undefined);
  const left = new Map(plans.map((plan) => [plan.index, ceilingOf(plan)]));
  const ceilingLeft = ({ index }: RoomPlan): number => left.get(index)!;
  const pieces: FloorPiece[] = [];
  const lay = (upper: RoomPlan, lower: RoomPlan, area: number): number => {
    if (area <= 0) return 0;
    pieces.push({ upper, lower, area });
    left.set(lower.index, ceilingLeft(lower) - area);
    return area;
  };
  const under = ({ storey }: RoomPlan): RoomPlan[] =>
    drawn
      .filter((plan) => plan.storey === storey - 1)
      .sort((a, b) => ceilingLeft(b) - ceilingLeft(a));
  const upper = drawn
    .filter(({ below }) => below === 'room')
    .sort((a, b) => isGuessed(a) - isGuessed(b) || b.area - a.area);
  const rests = upper.flatMap((plan) => {
    const likely = under(plan)[0];
    if (likely === undefined && plan.data.over === undefined) return [];
    const at = ['home', 'rooms', plan.name, 'over'];
    const source = 'the room below with most ceiling left';
    const over = defaults.word(at, plan.data.over, likely?.name ?? '', source);
    const lower = plans.find(({ name }) => name === over);
    if (lower === undefined) return [];
    const floor = floorOf(plan);
    return [{ plan, rest: floor - lay(plan, lower, Math.min(floor, ceilingLeft(lower))) }];
  });
  const hanging = rests.flatMap(({ plan, rest }): LeftOver[] => {
    let more = rest;
    for (const lower of under(plan)) more -= lay(plan, lower, Math.min(more, ceilingLeft(lower)));
    return more > ROUNDING ? [{ room: plan.name, area: more, whole: plan.area }] : [];
  });
  const bare = drawn.flatMap((plan): LeftOver[] => {
    const area = ceilingLeft(plan);
    return plan.above === 'room' && area > ROUNDING
      ? [{ room: plan.name, area, whole: plan.area }]
      : [];
  });
  return { pieces, hanging, bare };
}

/** 1 where nobody says what a room lies over, so that it takes what others leave. */
const isGuessed = ({ data }: RoomPlan): number => Number(data.over === undefined);

/** What is left of a floor, and of a ceiling, once what is said to be outdoors is taken off. [m2] */
const floorOf = ({ area, data }: RoomPlan): number => area - (data['exposed floor'] ?? 0);
const ceilingOf = ({ area, data }: RoomPlan): number => area - (data['exposed ceiling'] ?? 0);

const ROUNDING = 1e-9;
