/** What names of fitted values mean, a line for each kind that is among them; those that say it themselves have none. */
export const namesInWords = (names: readonly string[]): string[] =>
  MEANINGS.filter(([name]) => names.some((one) => one.startsWith(name))).map(
    ([name, means]) => `${name}: ${means}`,
  );

const MEANINGS: readonly (readonly [string, string])[] = [
  [
    'air leakage at 50 Pa',
    'how often an hour a blower door changes the air; in ordinary wind about a twentieth of that',
  ],
  ['usual airing', 'how far windows stand open in habits of airing, over what is usual'],
  ['moisture factor', 'water that people and what they do give off, over what is usual'],
  ['moisture buffer', 'what walls and furnishings take up of water in a day'],
  ['deep moisture', 'what they hold over weeks, over what they hold over a day'],
  ['steady moisture', 'water given to the room at all hours, besides that of people'],
  [
    'heat loss factor',
    'U-values that the scenario does not state, all together, over what was assumed; below 1 is better insulated',
  ],
  ['heat capacity factor', 'heat that walls and heavy things hold, over what was assumed'],
  ['window shading', 'share of the sun that is kept off windows at all times'],
  ['heater power', 'most that the heaters give, by floor area'],
  [
    'thermostat error',
    'what the thermostat reads too much; above 0 rooms are kept cooler than it is set, below 0 warmer',
  ],
  ['steady heat', 'heat given to the room at all hours, besides heating, people and sun'],
];
