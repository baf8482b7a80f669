import type { HomeFit } from '../fit/fit-home.ts';

/**
 * A fit as plain figures, for `--json`: all of it but the hours and the clock. Where the home is not
 * understood, `reliable` is false, and `told` of no parameter is more than "unreliable".
 */
export function fitFigures(found: HomeFit) {
  const { stages, foreseen, stated, clock: _, typicalWeather, ...fit } = found;
  return {
    ...fit,
    stated: stated.map(({ words }) => words),
    typical_weather: typicalWeather,
    stages: stages.map(({ group, channels, fit: { parameters, left, ...search } }) => ({
      group,
      ...search,
      parameters: parameters.map(({ adjustable, ...fitted }) => ({
        name: adjustable.name,
        unit: adjustable.unit,
        assumed: adjustable.before,
        assumed_low: adjustable.low,
        assumed_high: adjustable.high,
        paths: adjustable.places.map(({ path }) => path),
        ...fitted,
        ...(!fit.reliable && fitted.told !== 'no' && { told: 'unreliable' }),
      })),
      left: left.map(({ errors: _, ...each }, c) => ({
        quantity: channels[c]!.name,
        room: channels[c]!.room,
        unit: channels[c]!.unit,
        ...each,
      })),
    })),
    foreseen: foreseen.map(({ channel, from, judgement, alone, guideline14 }) => ({
      quantity: channel.name,
      room: channel.room,
      unit: channel.unit,
      from,
      ...judgement,
      scenario_alone: { rmse: alone.rmse, bias: alone.bias, skill: alone.skill },
      ...(guideline14 !== null && { cv_rmse: guideline14.cvRmse, nmbe: guideline14.nmbe }),
    })),
  };
}
