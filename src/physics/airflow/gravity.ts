/** Standard acceleration of free fall (CGPM 1901). [m/s2] */
export const GRAVITY = 9.80665;
