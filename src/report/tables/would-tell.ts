import type { HomeFit } from '../../fit/fit-home.ts';
import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';

/**
 * Which measurement would tell what a log does not, by the name of the parameter: the first that was not
 * logged.
 *
 * @param logged  what was, and in which room
 */
export function wouldTell(name: string, logged: HomeFit['logged'] = []): string {
  const room = /\((.*)\)$/.exec(name)?.[1];
  const isLogged = (quantities: readonly string[]) =>
    logged.some(
      (one) => quantities.includes(one.quantity) && (room === undefined || one.room === room),
    );
  const [, measurements = []] = MEASUREMENTS.find(([part]) => name.startsWith(part)) ?? [];
  return measurements.find(({ of = [] }) => !isLogged(of))?.words ?? 'a longer log';
}

interface Measurement {
  readonly words: string;
  /** Quantities of a log that are this measurement; none where a log cannot show that it was made. */
  readonly of?: readonly string[];
}

const AIR: readonly Measurement[] = [
  {
    words: `${CARBON_DIOXIDE.symbol} logged in a bedroom, or a blower door,`,
    of: [CARBON_DIOXIDE.name],
  },
  { words: 'a blower door' },
];
const WINDOWS: readonly Measurement[] = [
  { words: 'contacts of the windows, logged,', of: ['window'] },
];

const MEASUREMENTS: readonly (readonly [string, readonly Measurement[]])[] = [
  ['air', AIR],
  ['leakage', AIR],
  ['windows', WINDOWS],
  ['usual airing', WINDOWS],
  [
    'moisture factor',
    [
      {
        words: `a week with a weighed humidifier, or ${CARBON_DIOXIDE.symbol} in a bedroom,`,
        of: [CARBON_DIOXIDE.name],
      },
      { words: 'a week with a weighed humidifier' },
    ],
  ],
  ['steady moisture', [{ words: 'a week with a weighed humidifier in the room' }]],
  [
    'moisture buffer',
    [{ words: 'half an hour of steam in a shut room, logged every ten minutes,' }],
  ],
  ['deep moisture', [{ words: 'a log that runs from a wet into a dry season' }]],
  [
    'heat loss',
    [
      {
        words: 'a reading of the heating meter every day',
        of: ['heating power', 'heating electricity', 'gas'],
      },
    ],
  ],
  ['heat capacity', [{ words: 'a night or two with the heating off' }]],
  ['window shading', [{ words: 'some sunny days with the heating off' }]],
  ['heater power', [{ words: 'the heating switched fully on after a cold night' }]],
  ['thermostat error of cooling', [{ words: 'a log of hotter days' }]],
  ['cooling setpoint', [{ words: 'a log of hotter days' }]],
  ['thermostat', [{ words: 'a log of the hours in which the heating is on' }]],
  ['steady heat', [{ words: 'the heating power of the room, logged,', of: ['heating power'] }]],
  [CARBON_DIOXIDE.name, [{ words: 'who is at home, logged,', of: ['presence'] }]],
];
