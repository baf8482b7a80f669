import type { FittedRange } from '../scenario/edits/write-fitted.ts';
import type { HomeFit } from './fit-home.ts';

/**
 * What a fit writes into the scenario beside its values, by pointer: ranges of all values it set, of
 * those too that the log does not tell, which stay as uncertain as they were.
 *
 * @param log  which log, in words
 */
export function fittedValues({ stages }: HomeFit, log: string): Map<string, FittedRange> {
  return new Map(
    stages.flatMap(({ fit }) =>
      fit.parameters.flatMap(({ adjustable, low, high, told }) =>
        adjustable.places.map(({ path, at }): [string, FittedRange] => [
          path,
          {
            ...{
              low: rounded(Math.min(at(low), at(high))),
              high: rounded(Math.max(at(low), at(high))),
            },
            ...{ from: rounded(at(adjustable.before)), log },
            ...(adjustable.places.length > 1 && { by: adjustable.name }),
            ...(told === 'no' && { told: false as const }),
          },
        ]),
      ),
    ),
  );
}

/** As many digits as mean something, and some to spare: the value must lie within its range. */
const rounded = (value: number): number => Number(value.toPrecision(5));
