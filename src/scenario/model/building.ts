import { AGES, DRAUGHTS, GLAZINGS, SHAPES, WALLS } from '../choices.ts';
import {
  ABSORPTANCE,
  FLOOR_DEPTH,
  FRAME,
  FURNISHING_FACTOR,
  INNER_FLOOR_U,
  INNER_WALL_U,
  INTERNAL_MASS,
  LIKELY_GLAZING,
  LOFT,
  ROOF_PITCH,
  SHADING,
  SUN_TO_AIR,
} from '../presets/fabric.ts';
import { MOST_FLOOR_U_VALUE, MOST_U_VALUE } from '../presets/most-u-value.ts';
import { WINDOW_HEAD } from '../presets/rooms.ts';
import { choice, either, facing, plainNumber, quantity, type Shown, section } from './fields.ts';

const GROUND_FLOORS = ['solid', 'suspended timber', 'insulated'] as const;
export const MOULD_CLASSES = [
  'very sensitive',
  'sensitive',
  'medium resistant',
  'resistant',
] as const;

// Lower ones would leave no heat to speak of.
const uValue = (says: string, more: Shown, max = MOST_U_VALUE) =>
  quantity('W/m2K', { min: 0.02, max }, `Heat transmittance of ${says}`, more);
const capacity = (says: string, more: Shown) =>
  quantity('kJ/m2K', { min: 0, max: 5000 }, says, more);

export const buildModel = section(
  {
    age: either(
      [
        choice(AGES, 'Age band of the home'),
        plainNumber({ min: 1000, max: 2100, whole: true }, 'Year it was built', {
          unit: 'year',
          eg: 1935,
        }),
      ],
      `a year, or one of: ${AGES.join(', ')}`,
      'When the home was built, as a year or a band of years',
      { eg: 1935, usual: '1950-1966' },
    ).optional(),
    shape: choice(SHAPES, 'How the home stands to its neighbours', {
      usual: 'semi-detached',
    }).optional(),
    walls: choice(WALLS, 'What the outer walls are made of', {
      otherwise: 'most common of the age',
    }).optional(),
    glazing: choice(GLAZINGS, 'What kind of glass the windows have', {
      usual: LIKELY_GLAZING,
    }).optional(),
    loft: quantity('mm', { min: 0, max: 1000 }, 'Thickness of the insulation over the top storey', {
      usual: LOFT,
    }).optional(),
    floor: choice(GROUND_FLOORS, 'How the lowest floor is built', { usual: 'solid' }).optional(),
    draughts: choice(DRAUGHTS, 'How draughty the home feels, where nobody measured its leakage', {
      usual: 'average',
    }).optional(),
    front: facing('Where the front of the home looks', { usual: 'south' }).optional(),
    'wall u-value': uValue('outer walls', { eg: 1.3, otherwise: 'by walls and age' }).optional(),
    'wall heat capacity': capacity('Heat that a square metre of outer wall takes up for a kelvin', {
      eg: 300,
      otherwise: 'by what the walls are made of',
    }).optional(),
    'roof u-value': uValue('roof or top ceiling', {
      eg: 0.25,
      otherwise: 'by the insulation over the top storey',
    }).optional(),
    'floor u-value': uValue(
      'the lowest floor, soil included',
      { eg: 0.6, otherwise: 'by size, edges and kind of floor' },
      MOST_FLOOR_U_VALUE,
    ).optional(),
    'exposed floor u-value': uValue(
      'floors over open air',
      { eg: 0.5, otherwise: 'by age' },
      MOST_FLOOR_U_VALUE,
    ).optional(),
    'window u-value': uValue('windows, glass and frame together', {
      eg: 1.7,
      otherwise: 'by glazing',
    }).optional(),
    'window g-value': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the sunshine on the glass of windows that they let in',
      { eg: 0.63, otherwise: 'by glazing' },
    ).optional(),
    'window frame': quantity(
      '-',
      { min: 0, max: 0.9 },
      'Share of the area of windows that is frame',
      { usual: FRAME },
    ).optional(),
    'window shading': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine that neighbours, trees, reveals and curtains keep off windows',
      { usual: SHADING },
    ).optional(),
    'inner wall u-value': uValue('walls between rooms', { usual: INNER_WALL_U }, 3.5).optional(),
    'inner floor u-value': uValue('floors between rooms', { usual: INNER_FLOOR_U }, 3.5).optional(),
    'window head': quantity(
      'm',
      { min: 0.5, max: 12 },
      'Height of the upper edge of windows above the floor',
      { usual: WINDOW_HEAD },
    ).optional(),
    'roof pitch': quantity(
      'deg',
      { min: 0, max: 90 },
      'Pitch of the roof over the top ceilings, for wind on it',
      { usual: ROOF_PITCH },
    ).optional(),
    'floor depth': quantity(
      'm',
      { min: 0, max: 2 },
      'Thickness of a floor, from a ceiling to the floor of the room above',
      { usual: FLOOR_DEPTH },
    ).optional(),
    'party wall leakage': quantity(
      '-',
      { min: 0, max: 0.95 },
      'Share of the leaks found by a blower door that lead to neighbours, not outdoors',
      { eg: 0.3, otherwise: 'by the shape of the home' },
    ).optional(),
    absorptance: quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine that outer walls and roofs take',
      { usual: ABSORPTANCE },
    ).optional(),
    'internal mass': capacity(
      'Heat that inner walls and furniture take up for a kelvin, a square metre of floor',
      { usual: INTERNAL_MASS },
    ).optional(),
    'furnishing factor': plainNumber(
      { min: 1, max: 50 },
      'Heat capacity of the air and what warms with it, as a multiple of the air’s own',
      { usual: FURNISHING_FACTOR },
    ).optional(),
    'sun to air': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the sunshine let in that warms air at once, not surfaces',
      { usual: SUN_TO_AIR },
    ).optional(),
  },
  'Age and build of the home, from which everything a householder does not know is filled in',
  {
    eg: { age: 1935, shape: 'terrace', walls: 'solid brick', glazing: 'double' },
    otherwise: 'the most likely',
  },
);

export const leakageModel = section(
  {
    ach50: quantity(
      '1/h',
      { above: 0, max: 100 },
      'Air changes an hour at 50 Pa, as a blower-door test finds them',
      { eg: 8 },
    ).optional(),
    'air changes': quantity(
      '1/h',
      { min: 0, max: 20 },
      'Air changes an hour by leaks, the same at all hours',
      { eg: 0.5 },
    ).optional(),
    area: quantity('m2', { above: 0, max: 2 }, 'Effective area of all leaks at 4 Pa', {
      eg: '0.05 m2',
    }).optional(),
  },
  'How much air leaks through the shell, by exactly one of three measures',
  { eg: { ach50: 8 }, otherwise: 'by how draughty the home feels' },
);
