/** A figure as somebody would write it: four digits that tell something, and no zeros behind the point. */
export const written = (value: number): string => String(Number(value.toPrecision(4)));
