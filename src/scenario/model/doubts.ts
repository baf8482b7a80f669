import * as z from 'zod';
import { named, plainNumber } from './fields.ts';

const RANGE_WORDS = 'a list of two plain numbers, low and high, such as [7, 15]';

/** What is not known exactly: pointers into the scenario, each with the least and the most it may be. */
export const doubtsModel = named(
  z
    .tuple(
      [
        plainNumber({}, 'Low, in the documented unit'),
        plainNumber({}, 'High, in the documented unit'),
      ],
      { error: () => RANGE_WORDS },
    )
    .describe('Low and high'),
  'a mapping from pointers such as /heating/efficiency to [low, high]',
  'What is not known exactly: RFC 6901 pointers into this file, each with low and high; changes no run',
);
