import * as z from 'zod';
import { list, section, text } from '../scenario/model/fields.ts';
import { checkRecipe } from '../weather/make/check-recipe.ts';
import type { WeatherRecipe } from '../weather/make/recipe.ts';
import { checkedYaml } from './checked-yaml.ts';

/**
 * A recipe of a year from its YAML.
 *
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readRecipe(yaml: string, file: string): WeatherRecipe {
  return checkedYaml(yaml, file, recipeModel, (data) => {
    const { temperature, wind, sun, 'relative humidity': relativeHumidity, ...place } = data;
    const { 'daily range': dailyRange, 'day to day': dayToDay, ...rest } = temperature;
    const recipe: WeatherRecipe = {
      ...place,
      temperature: { ...rest, dailyRange, dayToDay },
      relativeHumidity,
      wind,
      sun: {
        persistence: sun.persistence,
        ...(sun.global && { global: sun.global }),
        ...(sun.clearness && { clearness: sun.clearness }),
      },
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
      { mean: twelve(), 'daily range': twelve(), 'day to day': twelve(), persistence: number() },
      'Of the air',
    ),
    'relative humidity': twelve(),
    wind: section({ mean: twelve(), persistence: number(), prevailing: number() }, 'At 10 m'),
    sun: section(
      { global: twelve().optional(), clearness: twelve().optional(), persistence: number() },
      'On the horizontal',
    ),
  },
  'Normals of twelve months',
);
