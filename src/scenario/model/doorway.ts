import { DOORWAY } from '../presets/leakage.ts';
import { hours } from './clock-fields.ts';
import { asInHome, list, quantity, section, text } from './fields.ts';

const doorShape = {
  width: quantity('m', { above: 0, max: 6 }, 'Width of a doorway', {
    usual: DOORWAY.width,
  }).optional(),
  height: quantity('m', { above: 0, max: 6 }, 'Height of a doorway', {
    usual: DOORWAY.height,
  }).optional(),
  mixing: quantity('m3/h', { min: 0, max: 10_000 }, 'Least air exchanged through an open doorway', {
    usual: DOORWAY.mixing,
  }).optional(),
  shut: quantity('m3/h', { min: 0, max: 1000 }, 'Air exchanged under and around a shut door', {
    usual: DOORWAY.shut,
  }).optional(),
};

/** What holds for every doorway that does not say otherwise. */
export const doorsModel = section(doorShape, 'Measures of all doorways that do not say otherwise', {
  eg: { width: '0.8 m' },
  otherwise: 'the usual',
});

export const doorwayModel = section(
  {
    between: list(
      text('Name of a room', { eg: 'hall' }),
      'the names of two rooms',
      'Names of the two rooms that the doorway joins',
      { eg: ['living', 'hall'] },
    ),
    open: hours('When the doorway stands open', {
      eg: '07:00-22:30',
      otherwise: 'always, beside a bedroom shut from 22:00 to 07:00',
    }).optional(),
    ...asInHome(doorShape),
  },
  'A doorway between two rooms',
);
