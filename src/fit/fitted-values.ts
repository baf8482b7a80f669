import type { FittedRange } from '../scenario/edits/write-fitted.ts';
import type { HomeFit } from './fit-home.ts';

/**
 * What a fit writes into the scenario beside its values, by pointer: ranges of all values it set, of
 * those too that the log does not tell, which stay as uncertain as they were. A fit that is not reliable tells none.
 *
 * @param log  which log, in words
 */
export function fittedValues(fit: HomeFit, log: string): Map<string, FittedRange> {
  const { stages } = fit;
  const isTold = fit.reliable;
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
            // Setpoints that are moved by the same kelvins are no multiples of anything.
            ...(adjustable.unit === '' && adjustable.places.length > 1 && { by: adjustable.name }),
            ...(!(isTold && told !== 'no') && { told: false as const }),
          },
        ]),
      ),
    ),
  );
}

/** As many digits as mean something, and some to spare: the value must lie within its range. */
const rounded = (value: number): number => Number(value.toPrecision(5));
