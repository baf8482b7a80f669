import { choice, either, facing, list, quantity, section, text } from './fields.ts';

const area = (says: string) => quantity('m2', { above: 0, max: 2000 }, says);
export const uValue = quantity(
  'W/m2K',
  { above: 0, max: 7 },
  'Heat transmittance, with both surfaces',
);
const heatCapacity = quantity(
  'kJ/m2K',
  { min: 0, max: 5000 },
  'Heat that a square metre of it takes up for a kelvin',
);

const layer = section(
  {
    thickness: quantity('m', { above: 0, max: 5 }, 'Thickness'),
    conductivity: quantity('W/mK', { above: 0, max: 500 }, 'Thermal conductivity'),
    density: quantity('kg/m3', { above: 0, max: 20_000 }, 'Density'),
    'specific heat': quantity('J/kgK', { above: 0, max: 10_000 }, 'Specific heat'),
  },
  'One layer',
);

const farSide = either(
  [
    choice(['outdoors', 'ground', 'nothing'], 'nothing: no heat passes'),
    section({ neighbour: quantity('°C', { min: -30, max: 50 }, 'Temperature there') }, 'Next door'),
    section({ room: text('Name of a room of this home') }, 'Another room'),
  ],
  'outdoors, ground, nothing, { neighbour: temperature } or { room: name }',
  'What lies beyond',
);

export const elementModel = section(
  {
    name: text('Only for the reader').optional(),
    kind: choice(['wall', 'floor', 'roof', 'partition'], 'What it is'),
    area: area('Area'),
    to: farSide.optional(),
    faces: facing('Where its outer face looks').optional(),
    tilt: quantity('deg', { min: 0, max: 180 }, '0 faces up, 90 is upright').optional(),
    absorptance: quantity('-', { min: 0, max: 1 }, 'Share of sunshine its face takes').optional(),
    'u-value': uValue.optional(),
    'heat capacity': heatCapacity.optional(),
    layers: list(layer, 'a list of layers', 'From the room outwards').optional(),
  },
  'A wall, floor or roof: u-value and heat capacity, or layers',
);
