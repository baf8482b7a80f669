import type { FittedRange } from '../scenario/edits/write-fitted.ts';
import type { HomeFit } from './fit-home.ts';
import { TWO_SIDED, valueAt } from './parameters/scaled-parameter.ts';
import type { FittedParameter } from './stage/fit-stage.ts';

/**
 * What a fit writes into the scenario beside its values, by pointer: ranges of all values it set, of
 * those too that the log does not tell, which stay as uncertain as they were: all of them where the fit is not
 * reliable.
 *
 * @param log  which log, in words
 */
export function fittedValues(fit: HomeFit, log: string): Map<string, FittedRange> {
  const { stages, reliable } = fit;
  return new Map(
    stages.flatMap(({ fit }) =>
      (reliable ? fit.parameters : fit.parameters.map(asBefore)).flatMap(
        ({ adjustable, low, high, told }) =>
          adjustable.places.map(({ path, at }): [string, FittedRange] => [
            path,
            {
              ...{
                low: rounded(Math.min(at(low), at(high))),
                high: rounded(Math.max(at(low), at(high))),
              },
              ...{ from: rounded(at(adjustable.before)), log },
              // Setpoints that are moved by the same kelvins are no multiples of anything.
              ...(adjustable.unit === '' &&
                adjustable.places.length > 1 && { by: adjustable.name }),
              ...(told === 'no' && { told: false as const }),
            },
          ]),
      ),
    ),
  );
}

/** As uncertain as before the log was looked at, about the value that is written. */
function asBefore(parameter: FittedParameter): FittedParameter {
  const { adjustable, place } = parameter;
  const end = (sign: number) => valueAt(adjustable, place + sign * TWO_SIDED);
  return { ...parameter, low: end(-1), high: end(1), told: 'no' };
}

/** As many digits as mean something, and some to spare: the value must lie within its range. */
const rounded = (value: number): number => Number(value.toPrecision(5));
