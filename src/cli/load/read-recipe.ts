import * as z from 'zod';
import { list, section, text } from '../../scenario/model/fields.ts';
import { checkRecipe } from '../../weather/make/check-recipe.ts';
import { USUAL_RECIPE, type WeatherRecipe } from '../../weather/make/recipe.ts';
import { checkedYaml } from './checked-yaml.ts';

/**
 * A recipe of a year from its YAML.
 *
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readRecipe(yaml: string, file: string): WeatherRecipe {
  return checkedYaml(yaml, file, recipeModel, (data) => {
    const { temperature, wind, sun, 'relative humidity': relativeHumidity, ...place } = data;
    const usual: string[] = [];
    const orUsual = (given: number | undefined, value: number, words: string): number => {
      if (given === undefined) usual.push(words);
      return given ?? value;
    };
    const twelveOr = (given: readonly number[] | undefined, value: number, words: string) => {
      if (given === undefined) usual.push(`${words} ${value} K`);
      return given ?? Array<number>(12).fill(value);
    };
    const { persistence } = USUAL_RECIPE;
    const lasting = (of: keyof typeof persistence, given: number | undefined) =>
      orUsual(given, persistence[of], `persistence of ${of} ${persistence[of]}`);
    const { dailyRange, dayToDay, prevailing } = USUAL_RECIPE;
    const recipe: WeatherRecipe = {
      ...place,
      temperature: {
        mean: temperature.mean,
        dailyRange: twelveOr(temperature['daily range'], dailyRange, 'daily range'),
        dayToDay: twelveOr(temperature['day to day'], dayToDay, 'day to day'),
        persistence: lasting('temperature', temperature.persistence),
      },
      relativeHumidity,
      wind: {
        mean: wind.mean,
        persistence: lasting('wind', wind.persistence),
        prevailing: orUsual(wind.prevailing, prevailing, `wind from ${prevailing}°`),
      },
      sun: {
        persistence: lasting('sun', sun.persistence),
        ...(sun.global && { global: sun.global }),
        ...(sun.clearness && { clearness: sun.clearness }),
      },
      usual,
    };
    checkRecipe(recipe, file);
    return recipe;
  });
}

// Shape only: `checkRecipe` knows how many numbers and which.
const number = () => z.number({ error: () => 'a number' });
const twelve = () => list(number(), 'twelve numbers, January first', 'By the month');

const recipeModel = section(
  {
    title: text('What the made file says it is'),
    latitude: number(),
    longitude: number(),
    elevation: number(),
    temperature: section(
      {
        mean: twelve(),
        'daily range': twelve().optional(),
        'day to day': twelve().optional(),
        persistence: number().optional(),
      },
      'Of the air',
    ),
    'relative humidity': twelve(),
    wind: section(
      { mean: twelve(), persistence: number().optional(), prevailing: number().optional() },
      'At 10 m',
    ),
    sun: section(
      {
        global: twelve().optional(),
        clearness: twelve().optional(),
        persistence: number().optional(),
      },
      'On the horizontal',
    ),
  },
  'Normals of twelve months',
);
