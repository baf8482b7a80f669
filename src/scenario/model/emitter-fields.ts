import { quantity } from './fields.ts';

/** What may be said of the emitter of one room, and of all that do not say otherwise. */
export const EMITTER_FIELDS = {
  'radiant share': quantity(
    '-',
    { min: 0, max: 1 },
    'Share of the heat that goes to surfaces by radiation',
  ).optional(),
  lag: quantity('min', { min: 0, max: 1440 }, 'Time constant of the emitter warming up').optional(),
};
