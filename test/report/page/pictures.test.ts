import { describe, expect, test } from 'vitest';
import {
  firstChoice,
  MOST_LINES,
  PICTURES,
  pictureId,
  weekStarts,
} from '../../../src/report/page/pictures.ts';
import type { LocalClock } from '../../../src/units/local-clock.ts';
import { MONDAY, someHours } from './picture-sample.ts';

const DAY = 24;
const shifted = (hours: number): LocalClock => ({ from: [0], offset: [hours * 3600] });
/** Numbers of days, of as many as there are, from a Monday on. */
const starts = (days: number, over: Partial<Parameters<typeof someHours>[0]> = {}) =>
  weekStarts(someHours({ temperature: Array.from({ length: days * DAY }, () => 20), ...over }));

describe('the weeks that readers may choose', () => {
  test('begin on Mondays, and at the coldest seven days wherever they begin', () => {
    expect(starts(22, { coldest: 3 * DAY })).toEqual([0, 3 * DAY, 7 * DAY, 14 * DAY]);
    expect(starts(22, { coldest: 7 * DAY })).toEqual([0, 7 * DAY, 14 * DAY]);
  });

  test('are whole: the last days begin none', () => {
    expect(starts(21)).toEqual([0, 7 * DAY, 14 * DAY]);
    expect(starts(20)).toEqual([0, 7 * DAY]);
  });

  test('are the one there is where there are no seven days', () => {
    expect(starts(3)).toEqual([0]);
  });

  test('follow the wall clock', () => {
    expect(starts(22, { clock: shifted(1), coldest: 23 })).toEqual([23, 167, 335]);
    expect(starts(22, { clock: shifted(-5), coldest: 5 })).toEqual([5, 173, 341]);
  });

  test('begin with the first whole hour of a Monday where midnight falls within one', () => {
    expect(starts(22, { clock: shifted(5.5), coldest: 19 })).toEqual([19, 163, 331]);
  });

  test('keep to midnight when the clocks change', () => {
    const spring: LocalClock = { from: [0, Date.UTC(2023, 2, 26, 1) / 1000], offset: [0, 3600] };
    const start = Date.UTC(2023, 2, 20) / 1000;
    expect(starts(22, { start, clock: spring })).toEqual([0, 167, 335]);
  });
});

describe('what is shown at first', () => {
  const data = someHours({ rooms: ['den', 'nook'], plans: ['now', 'dry'], coldest: 0 });

  test('is the room asked for, the baseline and the coldest week', () => {
    const weeks = [
      { word: 'coldest', hour: 48 },
      { word: 'dampest', hour: 24 },
    ] as const;
    const choice = { room: 1, plan: 0, lines: [0, 1], week: 48 };
    expect(firstChoice({ ...data, weeks }, 'nook')).toEqual(choice);
    expect(firstChoice({ ...data, weeks }, 'nook', 'dampest')).toEqual({ ...choice, week: 24 });
    expect(firstChoice({ ...data, weeks }, 'nook', 'hottest')).toEqual(choice);
  });

  test('is the first room where the one asked for is not in all plans', () => {
    expect(firstChoice(data, 'attic')).toEqual({ room: 0, plan: 0, lines: [0, 1], week: 0 });
  });

  test('is no more lines than can be told apart', () => {
    const many = someHours({ plans: ['a', 'b', 'c', 'd', 'e', 'f'] });
    expect(firstChoice(many, 'den').lines).toEqual([0, 1, 2, 3]);
    expect(MOST_LINES).toBe(4);
  });
});

describe('pictures', () => {
  const temperature = Array.from({ length: 10 * DAY }, (_, h) => 15 + (h % 24) / 3);
  const data = someHours({
    ...{ start: MONDAY, temperature, humidity: temperature.map((t) => 3 * t) },
    ...{ rooms: ['den', 'nook'], plans: ['now', 'dry'] },
  });

  test('have names of their own, and say what they follow', () => {
    const ids = PICTURES.map(pictureId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => id.startsWith('picture-'))).toBe(true);
  });

  test.each(PICTURES.map((picture) => [picture.id, picture] as const))(
    '%s names the room and the plan that were chosen, where it follows them',
    (_, { draw, follows }) => {
      const chart = draw(data, { room: 1, plan: 1, lines: [1], week: 48 }, 720);
      const said = JSON.stringify([chart.title, chart.table]);
      if (follows.includes('room')) expect(chart.title).toContain('nook');
      if (follows.includes('plan') || follows.includes('lines')) expect(said).toContain('dry');
      if (follows.includes('lines')) expect(said).not.toContain('now');
      if (follows.includes('week')) expect(chart.table.rows).toHaveLength(168);
      expect(JSON.stringify(draw(data, { room: 1, plan: 1, lines: [1], week: 48 }, 720))).toBe(
        JSON.stringify(chart),
      );
    },
  );
});

test('a plan keeps the look of its line whichever others are drawn', () => {
  const plans = ['now', 'dry', 'warm'];
  const data = someHours({
    rooms: ['den'],
    plans,
    temperature: Array.from({ length: 400 }, () => 20),
  });
  const cold = PICTURES.find(({ id }) => id === 'cold-spot')!;
  const coloursOf = (lines: readonly number[]) => {
    const { spec } = cold.draw(data, { room: 0, plan: 0, lines, week: 0 }, 700);
    const [first] = spec['layer'] as { encoding: { color: { scale: { range: string[] } } } }[];
    return first!.encoding.color.scale.range;
  };
  const [now, dry, warm] = coloursOf([0, 1, 2]);
  expect(new Set([now, dry, warm]).size).toBe(3);
  expect(coloursOf([1, 2])).toEqual([dry, warm]);
  expect(coloursOf([0, 2])).toEqual([now, warm]);
});
