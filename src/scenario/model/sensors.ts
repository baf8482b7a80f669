import type { SensorErrors } from '../../species/sensor-errors.ts';
import { byName } from '../../species/species-lists.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import type { Preset } from '../../units/preset.ts';
import { PRESENCE, SENSORS } from '../presets/sensors.ts';
import { SEED } from '../presets/step.ts';
import { choice, either, named, plainNumber, quantity, type Shown, section } from './fields.ts';

const chance = (says: string, more: Shown) => quantity('-', { min: 0, max: 1 }, says, more);
const time = (says: string, more: Shown) => quantity('min', { min: 0, max: 1440 }, says, more);

const presence = (inRoom: boolean) => {
  const usual = usualIn(inRoom);
  return either(
    [
      choice(['none'], 'No presence sensor'),
      section(
        {
          'hold on': time(
            'How long the presence sensor still reports somebody after the last sign of life',
            usual(PRESENCE['hold on']),
          ).optional(),
          delay: time(
            'Delay from the first sign of life until the presence sensor reports somebody',
            usual(PRESENCE.delay),
          ).optional(),
          'misses awake': chance(
            'Chance that the presence sensor overlooks somebody awake, per ten minutes',
            usual(PRESENCE['misses awake']),
          ).optional(),
          'misses asleep': chance(
            'Chance that the presence sensor overlooks somebody asleep, per ten minutes',
            usual(PRESENCE['misses asleep']),
          ).optional(),
        },
        'A presence sensor',
      ),
    ],
    'none, or a mapping with hold on, delay, misses awake, misses asleep',
    'The presence sensor of a room, or none',
    { eg: { 'hold on': '10 min' }, otherwise: inRoom ? 'as in the whole home' : 'a usual one' },
  );
};

/** Biases and the like are in `unit`; a temperature's are differences. */
const reading = (
  unit: string,
  most: number,
  says: string,
  errors: SensorErrors,
  inRoom: boolean,
) => {
  const usual = usualIn(inRoom);
  return either(
    [
      choice(['none'], 'Not measured'),
      section(
        {
          bias: quantity(
            unit,
            { min: -most, max: most },
            'Error that the sensor adds to every reading',
            usual(errors.bias),
          ).optional(),
          noise: quantity(
            unit,
            { min: 0, max: most },
            'Standard deviation of the noise of the sensor',
            usual(errors.noise),
          ).optional(),
          step: quantity(
            unit,
            { min: 0, max: most },
            'Step to which the sensor rounds its readings',
            usual(errors.step),
          ).optional(),
          lag: time(
            'Time constant of the lag of the sensor behind the room',
            usual(errors.lag),
          ).optional(),
          every: time('Interval between two reports of the sensor', usual(errors.every)).optional(),
        },
        'Errors of the sensor: bias, noise, rounding, lag, interval',
      ),
    ],
    'none, or a mapping with bias, noise, step, lag, every',
    says,
    { eg: { every: '5 min' }, otherwise: inRoom ? 'as in the whole home' : 'a usual one' },
  ).optional();
};

const sensorsShape = (species: readonly KnownSpecies[], inRoom: boolean) => ({
  presence: presence(inRoom).optional(),
  temperature: reading(
    'K',
    20,
    'The sensor of the temperature of the air, and how it errs',
    SENSORS.temperature!,
    inRoom,
  ),
  humidity: reading(
    '%',
    50,
    'The sensor of relative humidity, and how it errs',
    SENSORS.humidity!,
    inRoom,
  ),
  ...byName(species, ({ unit, limits, words, sensor }) =>
    reading(unit, limits.level, `${words}: its sensor, and how that errs`, sensor, inRoom),
  ),
});

/** What is told of a value that nobody gave: that of the whole home for a room, else the usual one. */
const usualIn =
  (inRoom: boolean) =>
  (usual: Preset): Shown =>
    inRoom ? { usual, otherwise: 'as in the whole home' } : { usual };

/** @param species  that sensors may measure */
export const sensorsModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      ...sensorsShape(species, false),
      rooms: named(
        section(sensorsShape(species, true), 'Sensors of one room', {
          eg: { humidity: { bias: '2 %' } },
        }),
        'a mapping from room names to sensors',
        'Sensors of single rooms, by the name of the room, or outdoors for readings from outside',
        { eg: { bedroom: { humidity: { bias: '2 %' } } }, otherwise: 'all alike' },
      ).optional(),
    },
    'Sensors that rules, habits, devices and gates go by, in every room that has none of its own',
    { eg: { humidity: { bias: '2 %' } }, otherwise: 'usual ones' },
  );

export const seed = plainNumber(
  { min: 0, max: 1e9, whole: true },
  'Random seed, by which a run with its chances can be repeated',
  { eg: 7, usual: SEED },
);
