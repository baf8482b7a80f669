import type { Automation } from '../../control/automation.ts';
import type { Notice } from '../../home/notices.ts';
import { oddLevel } from './odd-level.ts';

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
      const odd = oddLevel(condition.quantity, condition.value);
      return odd === null ? [] : [`${who} goes by ${odd}.`];
    }),
  );
  return [...new Set(texts)].map((text) => ({ id: 'odd-level', text }));
}
