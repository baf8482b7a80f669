import { requireWithin } from '../../units/require-within.ts';

/** A part of a home's shell through which it leaks. */
export interface ShellPart {
  readonly kind: 'wall' | 'roof' | 'floor';
  /** That meets outdoor air or a vented void; 0 for a slab on the ground. [m2] */
  readonly area: number;
  /** Of its lower edge above the home's height 0; of a roof or floor, where it lies. [m] */
  readonly bottom: number;
  /** From lower to upper edge; of a wall alone. [m] */
  readonly height: number;
}

/** A crack that stands for a part of a home's leakage. */
export interface Crack {
  /** Index of its part of the shell. */
  readonly part: number;
  /** Of the home's leakage through its own shell. [-] */
  readonly share: number;
  /** Above the home's height 0. [m] */
  readonly height: number;
}

/**
 * Share a home's leakage among the cracks that stand for it: by area over walls, roofs and lowest
 * floors; that of a wall half and half at a quarter and at three quarters of its height.
 *
 * Houses differ widely: in some two fifths of all leakage is a boarded floor. Two cracks are the fewest
 * with which a wall breathes by warmth as evenly spread leaks do, to within a few per cent.
 *
 * @param parts  at least one with an area; areas [m2] 0 to 10 000, lower edges [m] -100 to 100,
 *   heights [m] 0 to 100
 * @returns cracks in the order of the parts, two a wall; their shares add up to 1
 * @throws RangeError outside those ranges, NaN, or without any area
 *
 * Source: EN 16798-7:2017 (as EN 15242:2007), from memory; which has walls and roof only and sets the
 * quarters on the height of the whole zone.
 */
export function splitLeakage(parts: readonly ShellPart[]): readonly Crack[] {
  for (const { area, bottom, height } of parts) {
    requireWithin(area, AREAS, 'splitLeakage: area', 'm2');
    requireWithin(bottom, BOTTOMS, 'splitLeakage: lower edge', 'm');
    requireWithin(height, HEIGHTS, 'splitLeakage: height', 'm');
  }
  const whole = parts.reduce((sum, { area }) => sum + area, 0);
  if (whole === 0) throw new RangeError('splitLeakage: no part of the shell has an area');
  return parts.flatMap(({ kind, area, bottom, height }, part): readonly Crack[] =>
    kind === 'wall'
      ? QUARTERS.map((up) => ({ part, share: area / whole / 2, height: bottom + up * height }))
      : [{ part, share: area / whole, height: bottom }],
  );
}

const QUARTERS = [0.25, 0.75] as const;
const AREAS = [0, 10_000] as const;
const BOTTOMS = [-100, 100] as const;
const HEIGHTS = [0, 100] as const;
