/** Highest U-value that is taken; a higher one would leave no resistance beside the surfaces. [W/m2K] */
export const MOST_U_VALUE = 5.5;
/** Highest U-value of a floor that is taken: floors have more resistance at their surfaces. [W/m2K] */
export const MOST_FLOOR_U_VALUE = 4.5;
