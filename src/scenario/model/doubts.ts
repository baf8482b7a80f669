import * as z from 'zod';
import { named, plainNumber } from './fields.ts';

const RANGE_WORDS = 'a list of two plain numbers, low and high, such as [7, 15]';

/** What is not known exactly: pointers into the scenario, each with the least and the most it may be. */
export const doubtsModel = named(
  z
    .tuple(
      [
        plainNumber({}, 'Least that it may be, in the documented unit', { eg: 7 }),
        plainNumber({}, 'Most that it may be, in the documented unit', { eg: 15 }),
      ],
      { error: () => RANGE_WORDS },
    )
    .meta({ description: 'Least and most that it may be', eg: [7, 15] }),
  'a mapping from pointers such as /heating/efficiency to [low, high]',
  'What is not known exactly: pointers into this file (RFC 6901), each with the least and the most, which change no run',
  { eg: { '/home/leakage/ach50': [7, 15] }, otherwise: 'nothing' },
);
