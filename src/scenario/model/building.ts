import { choice, either, facing, plainNumber, quantity, section } from './fields.ts';

export const AGES = [
  'before 1900',
  '1900-1929',
  '1930-1949',
  '1950-1966',
  '1967-1975',
  '1976-1982',
  '1983-1990',
  '1991-1995',
  '1996-2002',
  '2003-2006',
  '2007 on',
] as const;

export const WALLS = [
  'solid brick',
  'cavity',
  'filled cavity',
  'timber frame',
  'granite',
  'sandstone',
  'system built',
] as const;

export const GLAZINGS = ['single', 'double', 'double low-e', 'triple'] as const;
const GROUND_FLOORS = ['solid', 'suspended timber', 'insulated'] as const;
export const DRAUGHTS = ['very tight', 'tight', 'average', 'leaky', 'very leaky'] as const;
export const SHAPES = ['flat', 'terrace', 'end terrace', 'semi-detached', 'detached'] as const;
export const FURNISHINGS = ['bare', 'furnished', 'plenty'] as const;
export const MOULD_CLASSES = [
  'very sensitive',
  'sensitive',
  'medium resistant',
  'resistant',
] as const;

// Higher ones would leave no resistance beside the surfaces, lower ones no heat to speak of.
const uValue = (says: string, max = 5.5) => quantity('W/m2K', { min: 0.02, max }, says);
const capacity = (says: string) => quantity('kJ/m2K', { min: 0, max: 5000 }, says);

export const buildModel = section(
  {
    age: either(
      [
        choice(AGES, 'Age band'),
        plainNumber({ min: 1000, max: 2100, whole: true }, 'Year it was built'),
      ],
      `a year, or one of: ${AGES.join(', ')}`,
      'When it was built',
    ).optional(),
    shape: choice(SHAPES, 'How it stands to its neighbours').optional(),
    walls: choice(WALLS, 'What the outer walls are made of').optional(),
    glazing: choice(GLAZINGS, 'What the windows are').optional(),
    loft: quantity('mm', { min: 0, max: 1000 }, 'Insulation over the top storey').optional(),
    floor: choice(GROUND_FLOORS, 'What the lowest floor is').optional(),
    draughts: choice(DRAUGHTS, 'How draughty it feels').optional(),
    front: facing('Where the front of the home looks').optional(),
    'wall u-value': uValue('Outer walls').optional(),
    'wall heat capacity': capacity('Outer walls').optional(),
    'roof u-value': uValue('Roof or top ceiling').optional(),
    'floor u-value': uValue('Lowest floor, soil included', 4.5).optional(),
    'exposed floor u-value': uValue('Floors over open air', 4.5).optional(),
    'window u-value': uValue('Windows, glass and frame').optional(),
    'window g-value': quantity('-', { min: 0, max: 1 }, 'Share of sunshine let in').optional(),
    'window frame': quantity('-', { min: 0, max: 0.9 }, 'Share that is frame').optional(),
    'window shading': quantity('-', { min: 0, max: 1 }, 'Share of sun kept off').optional(),
    'inner wall u-value': uValue('Walls between rooms', 3.5).optional(),
    'inner floor u-value': uValue('Floors between rooms', 3.5).optional(),
    'window head': quantity(
      'm',
      { min: 0.5, max: 12 },
      'Upper edge of windows above the floor',
    ).optional(),
    'roof pitch': quantity(
      'deg',
      { min: 0, max: 90 },
      'Roof over the top ceilings, for wind on it',
    ).optional(),
    'floor depth': quantity(
      'm',
      { min: 0, max: 2 },
      'From a ceiling to the floor above',
    ).optional(),
    'party wall leakage': quantity(
      '-',
      { min: 0, max: 0.95 },
      'Share of what a blower door finds that leads to neighbours, not outdoors',
    ).optional(),
    absorptance: quantity('-', { min: 0, max: 1 }, 'Share of sun that outer faces take').optional(),
    'internal mass': capacity('Inner walls and furniture, a square metre of floor').optional(),
    'furnishing factor': plainNumber(
      { min: 1, max: 50 },
      'Heat capacity of air and what warms with it, as a multiple of the air’s own',
    ).optional(),
    'sun to air': quantity('-', { min: 0, max: 1 }, 'Share of sunshine that warms air').optional(),
  },
  'Age and build, from which everything a householder does not know is filled in',
);

export const leakageModel = section(
  {
    ach50: quantity('1/h', { above: 0, max: 100 }, 'Blower-door result at 50 Pa').optional(),
    'air changes': quantity(
      '1/h',
      { min: 0, max: 20 },
      'Infiltration that holds at all hours, as a rate of air change',
    ).optional(),
    area: quantity('m2', { above: 0, max: 2 }, 'Effective leakage area at 4 Pa').optional(),
  },
  'How much air leaks through the shell: exactly one of these',
);
