import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

/** What is asked about a rule with conditions and quiet hours, beside its words. */
function asked(when: string, quiet: string, more = 'response: [{ tell: shut }]'): string[] {
  const rule = `rules: [{ name: night, when: [${when}], quiet hours: ${quiet}, ${more} }]`;
  return askedOf(readOnce(homeWith(rule), 'h.yaml'), null);
}

function askedOf(scenario: ReturnType<typeof readOnce>, plan: string | null): string[] {
  const { cautions } = preparePlan(scenario, { plan, set: [], files: new Map() });
  return cautions.filter(({ id }) => id === 'always-quiet').map(({ text }) => text);
}

const AT_NIGHT = '{ after: "22:00", before: "06:00" }';

describe('a rule that is quiet whenever it could tell', () => {
  test('is asked about', () => {
    expect(asked(AT_NIGHT, '"21:00-07:00"')).toEqual([
      'The rule night never tells anybody: its quiet hours cover every hour at which its conditions could hold. Is another time meant?',
    ]);
  });

  test.each([
    ['just as long', AT_NIGHT, '"22:00-06:00"', 1],
    ['a minute too short in the evening', AT_NIGHT, '"22:02-06:00"', 0],
    ['a minute too short in the morning', AT_NIGHT, '"22:00-05:58"', 0],
    [
      'a part of the day',
      '{ after: "13:00", before: "15:00" }',
      '["12:00-14:00", "14:00-16:00"]',
      1,
    ],
    ['an hour between', '{ after: "13:00", before: "16:00" }', '["12:00-14:00", "15:00-16:00"]', 0],
    ['readings alone', '{ room: living, reading: humidity, over: 65 }', '"21:00-07:00"', 0],
    [
      'readings beside the hours',
      `{ room: living, reading: humidity, over: 65 }, ${AT_NIGHT}`,
      '"21:00-07:00"',
      1,
    ],
    ['working days only', AT_NIGHT, '{ days: weekdays, from: "21:00", to: "07:00" }', 0],
  ])('%s: %s, quiet %s', (_, when, quiet, count) => {
    expect(asked(when, quiet)).toHaveLength(count);
  });

  test('is not where it only runs a device or turns the heating, nor twice of several rooms', () => {
    const set = 'response: [{ room: living, setpoint: 17 }]';
    expect(asked(AT_NIGHT, '"21:00-07:00"', set)).toEqual([]);
    const rooms = 'rooms: [living, bedroom], response: [{ tell: shut }]';
    const humid = `{ reading: humidity, over: 65 }, ${AT_NIGHT}`;
    expect(asked(humid, '"21:00-07:00"', rooms)).toHaveLength(1);
  });
});

test('no plan of a demonstration home or of the gallery has it', () => {
  const files = ['scenarios', 'scenarios/gallery'].flatMap((folder) =>
    readdirSync(folder).flatMap((file) => (file.endsWith('.yaml') ? [`${folder}/${file}`] : [])),
  );
  expect(files.length).toBeGreaterThan(8);
  let rules = 0;
  for (const file of files) {
    const scenario = readOnce(readFileSync(file, 'utf8'), file);
    for (const { name } of scenario.plans) {
      const { cautions, automation } = preparePlan(scenario, {
        plan: name,
        set: [],
        files: new Map(),
      });
      rules += automation.rules.length;
      expect(cautions.filter(({ id }) => id === 'always-quiet')).toEqual([]);
    }
  }
  expect(rules).toBeGreaterThan(0);
});
