import { choice, plainNumber, quantity, section, text } from './fields.ts';

export const SHELTERS = ['exposed', 'rural', 'suburban', 'urban', 'enclosed'] as const;
export const TERRAINS = ['city', 'suburban', 'open', 'flat'] as const;

const terrain = (says: string) => choice(TERRAINS, says);

export const siteModel = section(
  {
    latitude: quantity('deg', { min: -90, max: 90 }, 'North positive').optional(),
    longitude: quantity('deg', { min: -180, max: 180 }, 'East positive').optional(),
    elevation: quantity('m', { min: -500, max: 5000 }, 'Above sea level').optional(),
    timezone: text('Time zone by its IANA name, such as Europe/London').optional(),
    storeys: plainNumber(
      { min: 1, max: 3, whole: true },
      'Storeys of the home, for wind and warm air that leak through it',
    ).optional(),
    shelter: choice(
      SHELTERS,
      'What stands around against the wind: exposed (none) to enclosed (in all directions)',
    ).optional(),
    terrain: terrain(
      'What wind passes over for half a kilometre before it reaches the home',
    ).optional(),
    eaves: quantity(
      'm',
      { min: 2, max: 300 },
      'Height of the home’s eaves above the ground, at which wind meets it',
    ).optional(),
    'wind station': section(
      {
        terrain: terrain('What wind passes over before it reaches the weather station').optional(),
        height: quantity(
          'm',
          { min: 1, max: 200 },
          'Height of its anemometer above the ground',
        ).optional(),
      },
      'Where the wind of the weather was measured',
    ).optional(),
    albedo: quantity('-', { min: 0, max: 1 }, 'Share of sunshine the ground sends back').optional(),
    sky: choice(
      ['uneven', 'even'],
      'Diffuse light: uneven, brighter around the sun and at the horizon, or even, for comparison',
    ).optional(),
  },
  'Where the home stands',
);
