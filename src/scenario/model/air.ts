import { either, list, quantity, section } from './fields.ts';

/** Outdoors: one level, or twelve by month. */
const outdoors = (unit: string, max: number, says: string) => {
  const level = quantity(unit, { min: 0, max }, 'A level');
  const words = `a level in ${unit}, or a list of twelve, January first`;
  const months = list(level, words, 'By month, January first').refine(
    (levels) => levels.length === 12,
    { error: words },
  );
  return either([level, months], words, says).optional();
};

/** How fast a species settles on surfaces of a room. */
const settling = (says: string) => quantity('1/h', { min: 0, max: 20 }, says).optional();

export const deposition = () =>
  section(
    { tvoc: settling('Volatile organic compounds'), pm25: settling('Fine particles') },
    'How fast surfaces take it out of the air',
  ).optional();

export const airModel = section(
  {
    outdoors: section(
      {
        co2: outdoors('ppm', 5000, 'Carbon dioxide'),
        tvoc: outdoors('µg/m3', 10_000, 'Volatile organic compounds'),
        pm25: outdoors('µg/m3', 1000, 'Fine particles'),
      },
      'Where the weather file has no column of it',
    ).optional(),
    penetration: section(
      {
        tvoc: quantity('-', { min: 0, max: 1 }, 'Volatile organic compounds').optional(),
        pm25: quantity('-', { min: 0, max: 1 }, 'Fine particles').optional(),
      },
      'Share that survives the way in through leaks',
    ).optional(),
    deposition: deposition(),
  },
  'What the air carries besides water',
);
