import { expect, test } from 'vitest';
import type { HomeFit } from '../../../src/fit/fit-home.ts';
import type { FittedParameter } from '../../../src/fit/stage/fit-stage.ts';
import { fitWords } from '../../../src/report/tables/fit-words.ts';
import { wouldTell } from '../../../src/report/tables/would-tell.ts';

/** A fit of which only its words are asked. */
function fitOf(parameters: readonly unknown[], more: Partial<HomeFit> = {}): HomeFit {
  const stages = [{ group: 'water', channels: [], fit: { parameters } }];
  const bare = { stages, foreseen: [], cautions: [], typicalWeather: false };
  return { ...bare, division: { hours: 1000 }, ...more } as unknown as HomeFit;
}

const parameter = (name: string, value: number, before: number): Partial<FittedParameter> => ({
  ...{ adjustable: { name, unit: '', value, before } as FittedParameter['adjustable'] },
  ...{ value: 0.02, low: 0.01, high: 0.04, told: 'yes', mostLike: null },
});

test('what is taken only where somebody gives it was not assumed', () => {
  const both = [parameter('windows left open when mild', 0.01, 0), parameter('sun', 0.1, 0.1)];
  expect(fitWords(fitOf(both))).toEqual([
    {
      head: 'What your log tells',
      items: [
        'windows left open when mild: 0.0200 (0.0100 to 0.0400); nothing was said of it',
        'sun: 0.0200 (0.0100 to 0.0400); 0.100 was assumed',
      ],
    },
  ]);
});

test('a typical year is cautioned against', () => {
  expect(fitWords(fitOf([], { typicalWeather: true }))).toEqual([
    {
      head: 'Cautions',
      items: [
        'The weather is a typical year, not that of the log: unless both are invented together, this fit means nothing.',
      ],
    },
  ]);
});

test('steady heat is told by readings that a fit goes by, which an electricity meter is none of', () => {
  expect(wouldTell('steady heat (living)')).toBe('the heating power of the room, logged,');
});
