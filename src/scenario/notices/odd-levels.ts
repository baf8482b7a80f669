import type { Automation, Condition } from '../../control/automation.ts';
import type { Notice } from '../../home/notices.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';

/**
 * Levels that no home's air crosses, in rules and in habits of airing, because they stand in another unit: a
 * share of 1 for a humidity, °F for a temperature, % for carbon dioxide. Such a condition holds always or never.
 */
export function oddLevels({ rules, airings }: Pick<Automation, 'rules' | 'airings'>): Notice[] {
  const asked = [
    // One that stands for several rooms is asked about once.
    ...rules.map(({ name, series, all }) => ({
      who: `The rule ${series?.name ?? name}`,
      all,
    })),
    ...airings.map(({ name, after, until }) => ({
      who: `The airing ${name}`,
      all: [...(after.by === 'readings' ? after.all : []), ...until],
    })),
  ];
  const texts = asked.flatMap(({ who, all }) =>
    all.flatMap((condition) => {
      const odd = oddLevel(condition);
      return odd === null ? [] : [`${who} goes by ${odd}.`];
    }),
  );
  return [...new Set(texts)].map((text) => ({ id: 'odd-level', text }));
}

/** "0.6 % relative humidity, drier than any home. If that is a share of 1, write 60"; null for what can be meant. */
function oddLevel({ quantity, value }: Condition): string | null {
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
