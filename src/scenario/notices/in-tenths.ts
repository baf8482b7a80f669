/** A level without the digits that sums of fractions leave. [unit of the level] */
export const inTenths = (level: number): number => Number(level.toFixed(1));
