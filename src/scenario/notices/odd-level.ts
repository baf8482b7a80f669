import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';

/**
 * What is odd about a level that no home's air crosses, because it stands in another unit: "0.6 % relative
 * humidity, drier than any home. If that is a share of 1, write 60"; null for what can be meant.
 *
 * @param quantity  temperature [°C], relative humidity [%], or the name of a species
 */
export function oddLevel(quantity: string, value: number): string | null {
  const level = figureText(value, Number.isInteger(value) ? 0 : 2);
  if (quantity === 'relative humidity' && value > 0 && value <= 1) {
    return `${level} % relative humidity, drier than any home. If that is a share of 1, write ${figureText(100 * value, 0)}`;
  }
  if (quantity === 'temperature' && value > HOTTEST) {
    return `${level} °C, hotter than any home. If that is °F, write "${level} °F"`;
  }
  const facts = SPECIES.find(({ name }) => name === quantity);
  if (value > 0 && value < (facts?.leastInAir ?? 0)) {
    const { symbol, unit } = facts!;
    const share = unit === 'ppm' && value <= 1;
    const hint = share ? `. If that is %, write ${figureText(10_000 * value, 0)}` : '';
    return `${level} ${unit} of ${symbol}, less than any air holds${hint}`;
  }
  return null;
}

/** Above what it is anywhere that people live, outdoors too. [°C] */
const HOTTEST = 50;
