import { HEATER_LAG, HEATER_RADIANT, RADIATOR_LAG, RADIATOR_RADIANT } from '../presets/heating.ts';
import { quantity } from './fields.ts';

/** What may be said of the emitter of one room, and of all that do not say otherwise. */
export const EMITTER_FIELDS = {
  'radiant share': quantity(
    '-',
    { min: 0, max: 1 },
    'Share of the heat of emitters that goes to surfaces by radiation',
    {
      eg: 0.3,
      otherwise: `${RADIATOR_RADIANT.value} for radiators, ${HEATER_RADIANT.value} for electric heaters`,
    },
  ).optional(),
  lag: quantity('min', { min: 0, max: 1440 }, 'Time constant of an emitter warming up', {
    eg: '10 min',
    otherwise: `${RADIATOR_LAG.value} for radiators, ${HEATER_LAG.value} for electric heaters`,
  }).optional(),
};
