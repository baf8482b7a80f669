import type { KnownSpecies } from '../../species/species-table.ts';
import { deposition, materials } from './air.ts';
import { bandsModel } from './bands.ts';
import { FURNISHINGS, MOULD_CLASSES } from './building.ts';
import { elementModel, uValue } from './element.ts';
import { EMITTER_FIELDS } from './emitter-fields.ts';
import { choice, either, facing, list, plainNumber, quantity, section, text } from './fields.ts';

export const USES = [
  'living',
  'kitchen',
  'dining',
  'bedroom',
  'bathroom',
  'hall',
  'study',
  'utility',
  'storage',
] as const;
const ABOVE = ['roof', 'room', 'neighbour'] as const;
const BELOW = ['ground', 'room', 'neighbour', 'outdoors'] as const;
export const COLD_SPOTS = ['good', 'middling', 'poor', 'very poor'] as const;

const area = (says: string) => quantity('m2', { above: 0, max: 2000 }, says);

const paneModel = section(
  {
    name: text('Only for the reader').optional(),
    area: area('Glass and frame together').optional(),
    faces: facing('Where it looks').optional(),
    'u-value': uValue.optional(),
    'g-value': quantity('-', { min: 0, max: 1 }, 'Share of sunshine that gets in').optional(),
    frame: quantity('-', { min: 0, max: 0.9 }, 'Share of the area that is frame').optional(),
    shading: quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine kept off by trees, neighbours and curtains',
    ).optional(),
    tilt: quantity('deg', { min: 0, max: 90 }, '0 faces up, 90 is upright').optional(),
  },
  'One pane: glass and frame of a window',
);

const openingModel = section(
  {
    name: text('Name by which airing habits and rules call it').optional(),
    area: quantity('m2', { above: 0, max: 20 }, 'Area when fully open').optional(),
    height: quantity('m', { above: 0, max: 4 }, 'Height of the opening itself').optional(),
    head: quantity('m', { above: 0, max: 12 }, 'Its upper edge above the floor').optional(),
    faces: facing('Where it looks').optional(),
  },
  'What can stand open to the outdoors',
);

const emitterModel = section(
  {
    power: quantity('W', { min: 0, max: 100_000 }, 'Output at its rated excess').optional(),
    excess: quantity(
      'K',
      { min: 0, max: 80 },
      'Mean water over room temperature at which the power is rated; 0 for heaters without water',
    ).optional(),
    exponent: plainNumber(
      { min: 1, max: 2 },
      'Exponent of output over excess temperature, 1.3 for radiators',
    ).optional(),
    ...EMITTER_FIELDS,
  },
  'The emitter of the room: radiator, floor or heater',
);

export const coldSpot = (says: string) =>
  either(
    [
      choice(COLD_SPOTS, 'Quality of the coldest corner, in words'),
      plainNumber(
        { min: 0, max: 1 },
        'Temperature factor f_Rsi: (surface - outdoors)/(room - outdoors)',
      ),
    ],
    `a number from 0 to 1, or one of: ${COLD_SPOTS.join(', ')}`,
    says,
  );

/** @param species  that settle in a room, come from its materials, and have bands there */
export const roomModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      'floor area': quantity('m2', { min: 1, max: 2000 }, 'Floor area'),
      height: quantity('m', { above: 1, max: 12 }, 'Floor to ceiling').optional(),
      use: choice(USES, 'What the room is for').optional(),
      storey: plainNumber({ min: -2, max: 50, whole: true }, '0 is the ground floor').optional(),
      over: text('Room that this one lies over').optional(),
      above: choice(ABOVE, 'What lies over the ceiling').optional(),
      below: choice(BELOW, 'What lies under the floor').optional(),
      faces: facing('Where its outer wall and window look').optional(),
      'outer sides': plainNumber(
        { min: 0, max: 4 },
        'How many of its sides are outdoors',
      ).optional(),
      'outer walls': list(
        section(
          { area: area('With its windows'), faces: facing('Where it looks').optional() },
          'One outer wall',
        ),
        'a list of outer walls, each { area, faces }',
        'Instead of the number of outer sides',
      ).optional(),
      elements: list(
        elementModel,
        'a list of elements',
        'All walls, floors and roofs of the room; nothing is then filled in for them',
      ).optional(),
      panes: list(paneModel, 'a list of panes', 'All windows; an empty list for none').optional(),
      openings: list(openingModel, 'a list of openings', 'What can be opened').optional(),
      emitter: either(
        [choice(['none'], 'No heating here'), emitterModel],
        'none, or a mapping with power, excess, exponent, radiant share, lag',
        'Radiator or heater',
      ).optional(),
      'cold spot factor': coldSpot(
        'Temperature factor of the coldest spot: how near it stays to room temperature',
      ).optional(),
      'tiled area': quantity(
        'm2',
        { min: 0, max: 1e4 },
        'Tiles, on which water can stand; bathrooms have some unless told otherwise',
      ).optional(),
      furnishing: choice(FURNISHINGS, 'How much there is that takes up moisture').optional(),
      'steady moisture': quantity(
        'g/h',
        { min: 0, max: 5000 },
        'Water to its air at all hours, besides people and activities',
      ).optional(),
      'steady heat': quantity(
        'W',
        { min: 0, max: 10_000 },
        'Heat to its air at all hours, besides people, activities and heating',
      ).optional(),
      'mould class': choice(
        MOULD_CLASSES,
        'Mould sensitivity of the finish at the coldest spot',
      ).optional(),
      deposition: deposition(species),
      materials: materials(species, 'Given off by its materials, a square metre of floor'),
      bands: bandsModel(species).optional(),
    },
    'One room',
  );
