import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { expectShown } from '../reference/shown.ts';
import { unheatedCold } from './unheated-cold.ts';

const PAGE = 'docs/model.md';

test.each(['terrace', 'stove cottage', 'flat'])(
  'the page of the model says how cold the %s is on days off, without and with people who switch on',
  (home) => {
    const file = `${home.replace(' ', '-')}.yaml`;
    const [byMean, byPeople] = [
      unheatedCold(file, ['/heating/season/cold by=never']),
      unheatedCold(file),
    ];
    expect(byPeople.between).toBeLessThan(byMean.between);
    expect(byPeople.heatedDays).toBeGreaterThan(byMean.heatedDays);
    expect(byPeople.heat).toBeGreaterThan(byMean.heat);
    const cells = [
      home,
      `${Math.round(byMean.between)} → ${Math.round(byPeople.between)}`,
      `${byMean.heatedDays} → ${byPeople.heatedDays}`,
      `${(100 * (byPeople.heat / byMean.heat - 1)).toFixed(1)} % more`,
      Math.round(byPeople.summer),
    ];
    expectShown(PAGE, shownOf(home), `| ${cells.join(' | ')} |`);
  },
);

/** The row of a home in the table of days off. */
function shownOf(home: string): string {
  const page = readFileSync(PAGE, 'utf8');
  const table = page.slice(page.indexOf('| home | too cold on days off'));
  return new RegExp(`^\\| ${home} \\|.*$`, 'm').exec(table)?.[0] ?? 'no row';
}
