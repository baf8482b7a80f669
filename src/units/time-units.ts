/** How many of one unit of time another has. Days are those of 24 hours, which not all of a wall clock are. */
export const SECONDS_PER_HOUR = 3600;
export const SECONDS_PER_DAY = 86_400;
export const MINUTES_PER_DAY = 1440;
export const MINUTES_PER_WEEK = 10_080;
export const HOURS_PER_DAY = 24;
export const HOURS_PER_WEEK = 168;
