/** Radians in a degree. */
export const DEGREE = Math.PI / 180;

/** An angle brought into 0 (included) to 360 (excluded). [deg] */
export function turn(angle: number): number {
  const rest = angle % 360;
  return rest < 0 ? rest + 360 : rest;
}
