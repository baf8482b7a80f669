import { named, plainNumber, section, text } from './fields.ts';

/** What a log told of values of the file: written by a fit, read as measured. */
export const fittedModel = named(
  section(
    {
      low: plainNumber({}, 'Low end of the range of 95 %, in the documented unit'),
      high: plainNumber({}, 'High end, in the documented unit'),
      from: plainNumber({}, 'What stood there, or was assumed, before').optional(),
      log: text('The log that told it'),
    },
    'One value and how well it is known',
  ),
  'a mapping from pointers such as /home/leakage/ach50 to { low, high, from, log }',
  'Values of this file that were fitted to a log: RFC 6901 pointers, each with its range; changes no run',
);
