import { SHELTERS, TERRAINS } from '../choices.ts';
import { ALBEDO } from '../presets/fabric.ts';
import { FLAT_EAVES, STATION_HEIGHT } from '../presets/leakage.ts';
import { choice, plainNumber, quantity, type Shown, section, text } from './fields.ts';

const terrain = (says: string, more: Shown) => choice(TERRAINS, says, more);

export const siteModel = section(
  {
    latitude: quantity(
      'deg',
      { min: -90, max: 90 },
      'Latitude of the home, north of the equator positive',
      { eg: 51.5, otherwise: 'that of the weather file' },
    ).optional(),
    longitude: quantity(
      'deg',
      { min: -180, max: 180 },
      'Longitude of the home, east of Greenwich positive',
      { eg: -0.13, otherwise: 'that of the weather file' },
    ).optional(),
    elevation: quantity('m', { min: -500, max: 5000 }, 'Height of the home above sea level', {
      eg: 120,
      otherwise: 'that of the weather file',
    }).optional(),
    timezone: text('Time zone of the home by its IANA name, by which all local times are read', {
      eg: 'Europe/London',
      otherwise: 'noon as the longitude has it',
    }).optional(),
    storeys: plainNumber(
      { min: 1, max: 3, whole: true },
      'How many storeys the home has, for wind and rising warm air that leak through it',
      { usual: 1 },
    ).optional(),
    shelter: choice(
      SHELTERS,
      'What stands around the home against the wind, from exposed (nothing) to enclosed (on all sides)',
      { usual: 'suburban' },
    ).optional(),
    terrain: terrain(
      'Ground that wind passes over for half a kilometre before it reaches the home',
      { otherwise: 'as goes with the shelter' },
    ).optional(),
    eaves: quantity(
      'm',
      { min: 2, max: 300 },
      'Height above the ground of the eaves of the home, at which wind meets it',
      { eg: '5.5 m', otherwise: `ceiling of the highest storey, ${FLAT_EAVES.value} m for a flat` },
    ).optional(),
    'wind station': section(
      {
        terrain: terrain('Ground that wind passes over before it reaches the weather station', {
          usual: 'open',
        }).optional(),
        height: quantity(
          'm',
          { min: 1, max: 200 },
          'Height of the anemometer of the weather station above the ground',
          { usual: STATION_HEIGHT },
        ).optional(),
      },
      'Where the wind of the weather file was measured',
      { eg: { terrain: 'open', height: '10 m' }, otherwise: 'at a usual weather station' },
    ).optional(),
    albedo: quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine that the ground around the home sends back',
      { usual: ALBEDO },
    ).optional(),
    sky: choice(
      ['uneven', 'even'],
      'How bright the sky is without the sun: uneven, brighter around the sun and at the horizon, or even',
      { usual: 'uneven' },
    ).optional(),
  },
  'Where the home stands and what is around it',
  {
    eg: { latitude: 51.5, longitude: -0.13, timezone: 'Europe/London' },
    otherwise: 'where the weather file says',
  },
);
