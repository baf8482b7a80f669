import { requireWithin } from '../../units/require-within.ts';

/** A share with the range it may lie in. [-] */
export interface PartyWallShare {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share of what a blower door finds in one home that comes from its neighbours and not from outdoors.
 *
 * A test of one home alone cannot tell the two apart. Where row houses were tested with their
 * neighbours under pressure too, party walls leaked as much per square metre as the outer shell, so
 * the share is that of the areas. A plastered wall of solid brick is tighter, hollow blocks that are
 * open to the loft are leakier: low and high, a fifth and six fifths of that per square metre, are a
 * judgement.
 *
 * @param partyArea  of walls, floors and ceilings to neighbours [m2], 0 to 10 000
 * @param outerArea  of walls, roof and lowest floor to outdoors [m2], 1 to 10 000
 * @throws RangeError outside those ranges, or NaN
 *
 * @example partyWallShare(80, 130) // { value: 0.381, low: 0.110, high: 0.425 }
 *
 * Source: J. A. Love, "Airtightness survey of row houses in Calgary", ASTM STP 1067, 1990.
 */
export function partyWallShare(partyArea: number, outerArea: number): PartyWallShare {
  requireWithin(partyArea, PARTY_AREAS, 'partyWallShare: party area', 'm2');
  requireWithin(outerArea, OUTER_AREAS, 'partyWallShare: outer area', 'm2');
  const shareAt = (leakiness: number): number => {
    const party = leakiness * partyArea;
    return party / (party + outerArea);
  };
  return { value: shareAt(1), low: shareAt(TIGHT), high: shareAt(LEAKY) };
}

const PARTY_AREAS = [0, 10_000] as const;
const OUTER_AREAS = [1, 10_000] as const;
/** Leakage of a square metre of party wall over that of the outer shell. [-] */
const TIGHT = 0.2;
const LEAKY = 1.2;
