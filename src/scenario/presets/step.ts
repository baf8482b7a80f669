/** Time step of a run. [min] */
export const STEP = 10;

/** Where the draws of a run begin. */
export const SEED = 1;
