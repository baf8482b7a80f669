import { choice, either, facing, list, quantity, section, text } from './fields.ts';

/** Heat transmittance of a pane or an element. */
export const uValue = (of: string, otherwise: string) =>
  quantity('W/m2K', { above: 0, max: 7 }, `Heat transmittance of the ${of}, with both surfaces`, {
    eg: 1.3,
    otherwise,
  });
const heatCapacity = quantity(
  'kJ/m2K',
  { min: 0, max: 5000 },
  'Heat that a square metre of the element takes up for a kelvin',
  { eg: 150, otherwise: 'usual for its kind' },
);

const layer = section(
  {
    thickness: quantity('m', { above: 0, max: 5 }, 'Thickness of the layer', { eg: '0.1 m' }),
    conductivity: quantity('W/mK', { above: 0, max: 500 }, 'Thermal conductivity of the layer', {
      eg: 0.7,
    }),
    density: quantity('kg/m3', { above: 0, max: 20_000 }, 'Density of the layer', { eg: 1800 }),
    'specific heat': quantity('J/kgK', { above: 0, max: 10_000 }, 'Specific heat of the layer', {
      eg: 900,
    }),
  },
  'One layer',
);

const farSide = either(
  [
    choice(['outdoors', 'ground', 'nothing'], 'nothing: no heat passes'),
    section(
      {
        neighbour: quantity('°C', { min: -30, max: 50 }, 'Temperature on the far side, all year', {
          eg: '18 °C',
        }),
      },
      'Next door',
    ),
    section(
      { room: text('Name of the room of this home that lies beyond', { eg: 'hall' }) },
      'Another room',
    ),
  ],
  'outdoors, ground, nothing, { neighbour: temperature } or { room: name }',
  'What lies beyond the element',
  { eg: { neighbour: '18 °C' }, otherwise: 'outdoors, for a partition nothing' },
);

export const elementModel = section(
  {
    name: text('Name of the element, for tables', {
      eg: 'north wall',
      otherwise: 'the room, its kind and a number',
    }).optional(),
    kind: choice(['wall', 'floor', 'roof', 'partition'], 'What kind of element it is'),
    area: quantity('m2', { above: 0, max: 2000 }, 'Area of the element', { eg: '9.6 m2' }),
    to: farSide.optional(),
    faces: facing('Where the outer face of the element looks', {
      otherwise: 'as the room',
    }).optional(),
    tilt: quantity(
      'deg',
      { min: 0, max: 180 },
      'Tilt of the element, where 0 faces up and 90 is upright',
      { eg: '35 deg', otherwise: '90 for a wall, 0 for a roof' },
    ).optional(),
    absorptance: quantity(
      '-',
      { min: 0, max: 1 },
      'Share of sunshine that the outer face of the element takes',
      { eg: 0.6, otherwise: 'that of all outer faces' },
    ).optional(),
    'u-value': uValue('element', 'that of outer walls, or by its layers').optional(),
    'heat capacity': heatCapacity.optional(),
    layers: list(layer, 'a list of layers', 'Layers of the element, from the room outwards', {
      otherwise: 'by u-value and heat capacity',
    }).optional(),
  },
  'A wall, floor or roof, by its u-value and heat capacity or by its layers',
);
