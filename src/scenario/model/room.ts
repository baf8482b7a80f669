import type { KnownSpecies } from '../../species/species-table.ts';
import { COLD_SPOTS, FURNISHINGS, USES } from '../choices.ts';
import { OPENABLE, OPENING_HEIGHT } from '../presets/rooms.ts';
import { deposition, materials } from './air.ts';
import { bandsModel } from './bands.ts';
import { MOULD_CLASSES } from './building.ts';
import { elementModel, uValue } from './element.ts';
import { EMITTER_FIELDS } from './emitter-fields.ts';
import {
  asInHome,
  choice,
  either,
  facing,
  list,
  plainNumber,
  quantity,
  type Shown,
  section,
  text,
} from './fields.ts';

const ABOVE = ['roof', 'room', 'neighbour'] as const;
const BELOW = ['ground', 'room', 'neighbour', 'outdoors'] as const;
const area = (says: string, more: Shown) => quantity('m2', { above: 0, max: 2000 }, says, more);

const paneModel = section(
  {
    name: text('Name of the pane, by which blinds call it', {
      eg: 'south window',
      otherwise: 'the room and “window”',
    }).optional(),
    area: area('Area of the pane, glass and frame together', {
      eg: '1.8 m2',
      otherwise: 'by floor area and use of the room',
    }).optional(),
    faces: facing('Where the pane looks', { otherwise: 'as the room' }).optional(),
    'u-value': uValue('pane', 'that of all windows').optional(),
    'g-value': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the sunshine on the glass of the pane that gets in',
      { eg: 0.63, otherwise: 'that of all windows' },
    ).optional(),
    frame: quantity('-', { min: 0, max: 0.9 }, 'Share of the area of the pane that is frame', {
      eg: 0.3,
      otherwise: 'that of all windows',
    }).optional(),
    shading: quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine that trees, neighbours and curtains keep off the pane',
      { eg: 0.25, otherwise: 'that of all windows' },
    ).optional(),
    tilt: quantity(
      'deg',
      { min: 0, max: 90 },
      'Tilt of the pane, where 0 faces up and 90 is upright',
      { usual: 90 },
    ).optional(),
  },
  'One pane, glass and frame of a window',
  { eg: { area: '1.8 m2', faces: 'south' } },
);

const openingModel = section(
  {
    name: text('Name of the opening, by which airing habits and rules call it', {
      eg: 'bedroom tilt',
      otherwise: 'the room and “window”',
    }).optional(),
    area: quantity('m2', { above: 0, max: 20 }, 'Area of the opening when fully open', {
      eg: '0.8 m2',
      otherwise: `${100 * OPENABLE.value} % of the window`,
    }).optional(),
    height: quantity('m', { above: 0, max: 4 }, 'Height of the opening itself', {
      usual: OPENING_HEIGHT,
    }).optional(),
    head: quantity(
      'm',
      { above: 0, max: 12 },
      'Height of the upper edge of the opening above the floor',
      { eg: '2.1 m', otherwise: 'that of all windows' },
    ).optional(),
    faces: facing('Where the opening looks', { otherwise: 'as the first pane' }).optional(),
  },
  'What can stand open to the outdoors',
  { eg: { area: '0.8 m2', height: '1 m' } },
);

const emitterModel = section(
  {
    power: quantity(
      'W',
      { min: 0, max: 100_000 },
      'Output of the emitter at its rated excess temperature',
      { eg: '1200 W', otherwise: 'by floor area' },
    ).optional(),
    excess: quantity(
      'K',
      { min: 0, max: 80 },
      'Mean water over room temperature at which the power is rated, 0 for heaters without water',
      { eg: '50 K', otherwise: 'as in the whole home' },
    ).optional(),
    exponent: plainNumber(
      { min: 1, max: 2 },
      'Exponent of output over excess temperature, 1.3 for radiators',
      { eg: 1.3, otherwise: 'as in the whole home' },
    ).optional(),
    ...asInHome(EMITTER_FIELDS),
  },
  'The emitter of the room, a radiator, a warm floor or a heater',
  { eg: { power: '1200 W' } },
);

export const coldSpot = (says: string, more: Shown) =>
  either(
    [
      choice(COLD_SPOTS, 'Quality of the coldest corner, in words'),
      plainNumber(
        { min: 0, max: 1 },
        'Temperature factor f_Rsi: (surface - outdoors)/(room - outdoors)',
        { eg: 0.75 },
      ),
    ],
    `a number from 0 to 1, or one of: ${COLD_SPOTS.join(', ')}`,
    says,
    { eg: 0.75, ...more },
  );

/** @param species  that settle in a room, come from its materials, and have bands there */
export const roomModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      'floor area': quantity('m2', { min: 1, max: 2000 }, 'Floor area of the room', {
        eg: '16 m2',
      }),
      height: quantity('m', { above: 1, max: 12 }, 'Height of the room from floor to ceiling', {
        eg: '2.4 m',
        otherwise: 'that of all rooms',
      }).optional(),
      use: choice(USES, 'What the room is for, which says who and what is in it', {
        eg: 'bedroom',
        otherwise: 'what the name of the room says, else living',
      }).optional(),
      storey: plainNumber(
        { min: -2, max: 50, whole: true },
        'Storey that the room is on, where 0 is the ground floor',
        { eg: 1, otherwise: 'bedrooms and bathrooms upstairs where the home has storeys' },
      ).optional(),
      over: text('Name of the room that this one lies over', {
        eg: 'living',
        otherwise: 'the likeliest of the storey below',
      }).optional(),
      above: choice(ABOVE, 'What lies over the ceiling of the room', {
        otherwise: 'roof on the top storey, neighbour in a flat, else room',
      }).optional(),
      below: choice(BELOW, 'What lies under the floor of the room', {
        otherwise: 'ground on the lowest storey, neighbour in a flat, else room',
      }).optional(),
      'exposed floor': quantity(
        'm2',
        { min: 0, max: 2000 },
        'Part of the floor of a room over others that hangs over outdoors, a passage, a garage or anything as cold',
        { eg: '3 m2', otherwise: 'none' },
      ).optional(),
      'exposed ceiling': quantity(
        'm2',
        { min: 0, max: 2000 },
        'Part of the ceiling of a room under others that has a roof or a terrace over it',
        { eg: '8 m2', otherwise: 'none' },
      ).optional(),
      faces: facing('Where the outer wall and the window of the room look', {
        otherwise:
          'living room, hall and, where others look to the back, the first bedroom as the front, the rest as the back',
      }).optional(),
      'outer sides': plainNumber(
        { min: 0, max: 4 },
        'How many of the four sides of the room are outdoors',
        { eg: 1.4, otherwise: 'by the shape of the home' },
      ).optional(),
      'outer walls': list(
        section(
          {
            area: area('Area of the outer wall, with its windows', { eg: '9.6 m2' }),
            faces: facing('Where the outer wall looks', { otherwise: 'as the room' }).optional(),
          },
          'One outer wall',
        ),
        'a list of outer walls, each { area, faces }',
        'Outer walls of the room, instead of the number of its outer sides',
        { otherwise: 'by the outer sides' },
      ).optional(),
      elements: list(
        elementModel,
        'a list of elements',
        'All walls, floors and roofs of the room, for which nothing is then filled in',
        { otherwise: 'by age and build of the home' },
      ).optional(),
      panes: list(paneModel, 'a list of panes', 'All windows of the room, an empty list for none', {
        otherwise: 'one, by floor area and use of the room',
      }).optional(),
      openings: list(openingModel, 'a list of openings', 'What can be opened to the outdoors', {
        otherwise: 'part of the first window',
      }).optional(),
      emitter: either(
        [choice(['none'], 'No heating here'), emitterModel],
        'none, or a mapping with power, excess, exponent, radiant share, lag',
        'What heats the room: a radiator, a heater, or none',
        { eg: { power: '1200 W' }, otherwise: 'one by floor area, none in storage' },
      ).optional(),
      'cold spot factor': coldSpot(
        'How near the coldest spot of the room’s outer walls stays to room temperature',
        { otherwise: 'as in the whole home' },
      ).optional(),
      'tiled area': quantity(
        'm2',
        { min: 0, max: 1e4 },
        'Area of tiles in the room, on which water can stand',
        { eg: '14 m2', otherwise: 'floor and half of the walls of a bathroom, 0 elsewhere' },
      ).optional(),
      furnishing: choice(FURNISHINGS, 'How much stands in the room that takes up moisture', {
        otherwise: 'as in the whole home',
      }).optional(),
      'steady moisture': quantity(
        'g/h',
        { min: 0, max: 5000 },
        'Water that the air of the room gets at all hours, besides that of people and activities',
        { usual: 0 },
      ).optional(),
      'steady heat': quantity(
        'W',
        { min: 0, max: 10_000 },
        'Heat that the air of the room gets at all hours, besides that of people, activities and heating',
        { usual: 0 },
      ).optional(),
      'mould class': choice(
        MOULD_CLASSES,
        'How readily mould grows on the finish of the coldest spot of the room',
        { otherwise: 'as in the whole home' },
      ).optional(),
      deposition: deposition(species, 'as in the whole home'),
      materials: materials(
        species,
        'What the materials of the room give off all the time, a square metre of floor',
        'as in the whole home',
      ),
      bands: bandsModel(
        species,
        'Ranges that count as fine in the room',
        'as in the whole home',
      ).optional(),
    },
    'One room, of which only the floor area has to be given',
    { eg: { 'floor area': '16 m2', use: 'bedroom' } },
  );
