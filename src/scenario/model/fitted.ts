import * as z from 'zod';
import { named, plainNumber, section, text } from './fields.ts';

/** Unit of a value that may be any. */
const DOCUMENTED = 'unit of the value';

/** What a log told of values of the file: written by a fit, read as measured. */
export const fittedModel = named(
  section(
    {
      low: plainNumber({}, 'Low end of the range of 95 %, in the documented unit', {
        unit: DOCUMENTED,
        eg: 6.1,
      }),
      high: plainNumber({}, 'High end of the range of 95 %, in the documented unit', {
        unit: DOCUMENTED,
        eg: 9.8,
      }),
      from: plainNumber({}, 'Value that stood there, or was assumed, before the fit', {
        unit: DOCUMENTED,
        eg: 10,
        otherwise: 'not known',
      }).optional(),
      by: text('Factor that was found, which scales this value together with others', {
        eg: 'heat loss factor',
        otherwise: 'the value was found itself',
      }).optional(),
      told: z
        .boolean({ error: () => 'true or false' })
        .meta({
          description:
            'Whether the log tells the value; one that it does not stays as uncertain as before',
          eg: false,
          otherwise: 'the log tells it',
        })
        .optional(),
      log: text('Path of the log that the value was fitted to', { eg: 'log.csv' }),
    },
    'One value and how well it is known',
    { eg: { low: 6.1, high: 9.8, log: 'log.csv' } },
  ),
  'a mapping from pointers such as /home/leakage/ach50 to { low, high, from, log }',
  'Values of this file that were fitted to a log: pointers (RFC 6901), each with its range, which change no run',
  { eg: { '/home/leakage/ach50': { low: 6.1, high: 9.8, log: 'log.csv' } }, otherwise: 'none' },
);
