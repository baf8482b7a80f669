import { hours } from './clock-fields.ts';
import { list, quantity, section, text } from './fields.ts';

const doorShape = {
  width: quantity('m', { above: 0, max: 6 }, 'Width').optional(),
  height: quantity('m', { above: 0, max: 6 }, 'Height').optional(),
  mixing: quantity('m3/h', { min: 0, max: 10_000 }, 'Least exchange when open').optional(),
  shut: quantity('m3/h', { min: 0, max: 1000 }, 'Exchange under and around it, shut').optional(),
};

/** What holds for every doorway that does not say otherwise. */
export const doorsModel = section(doorShape, 'All doorways that do not say otherwise');

export const doorwayModel = section(
  {
    between: list(text('Name of a room'), 'the names of two rooms', 'Two rooms'),
    open: hours('When it stands open').optional(),
    ...doorShape,
  },
  'A doorway between two rooms',
);
