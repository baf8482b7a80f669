import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
/** Which measurement would tell what a log does not, by the name of the parameter. */
export function wouldTell(name: string): string {
  return MEASUREMENTS.find(([part]) => name.startsWith(part))?.[1] ?? 'a longer log';
}

const MEASUREMENTS: readonly (readonly [string, string])[] = [
  ['air', `${CARBON_DIOXIDE.symbol} logged in a bedroom, or a blower door,`],
  ['leakage', `${CARBON_DIOXIDE.symbol} logged in a bedroom, or a blower door,`],
  ['windows', 'contacts of the windows, logged,'],
  ['usual airing', 'contacts of the windows, logged,'],
  [
    'moisture factor',
    `a week with a weighed humidifier, or ${CARBON_DIOXIDE.symbol} in a bedroom,`,
  ],
  ['steady moisture', 'a week with a weighed humidifier in the room'],
  ['moisture buffer', 'half an hour of steam in a shut room, logged every ten minutes,'],
  ['deep moisture', 'a log that runs from a wet into a dry season'],
  ['heat loss', 'a reading of the heating meter every day'],
  ['heat capacity', 'a night or two with the heating off'],
  ['window shading', 'some sunny days with the heating off'],
  ['heater power', 'the heating switched fully on after a cold night'],
  ['thermostat', 'a log of the hours in which the heating is on'],
  ['steady heat', 'the heating power of the room, logged,'],
  [CARBON_DIOXIDE.name, 'who is at home, logged,'],
];
