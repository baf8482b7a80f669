import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
/** A rule as it stands in a scenario. */
export type OfferedRule = Readonly<Record<string, unknown>> & { readonly name: string };

/**
 * Rules that many homes want, each in some rooms while somebody is in them.
 *
 * @param rooms  with windows that open
 */
export const ruleOffers = (rooms: readonly string[]): readonly OfferedRule[] => [
  ...adviceToAir(rooms),
  {
    ...{ name: 'cold with windows open', rooms },
    when: [{ reading: 'temperature', under: 18, clear: 18.5 }, { windows: 'open' }],
    ...{ 'on delay': '5 min', gate: 'when present' },
    response: [{ tell: 'shut the window' }, { close: 'here', probability: '80 %', delay: '5 min' }],
  },
];

/** Rules that ask for open windows: those who can act are told, four times a day at most. */
export const adviceToAir = (rooms: readonly string[]): readonly OfferedRule[] => [
  rule('stale air', rooms, '10 min', 'open a window', [
    { reading: CARBON_DIOXIDE.name, over: 1200, clear: 900 },
    { windows: 'closed' },
  ]),
  rule('damp air', rooms, '15 min', 'air the room', [
    { reading: 'humidity', over: 65, clear: 60 },
    { reading: 'humidity above outdoors', over: 2, clear: 1 }, // g/m3: drier outside
    { windows: 'closed' },
  ]),
];

/** Rules as they are, but whether somebody is there or not, at all hours and as often as they like. */
export const withoutRestraint = (rules: readonly OfferedRule[]): OfferedRule[] =>
  rules.map(({ gate: _, 'quiet hours': __, 'most a day': ___, ...kept }) => kept);

/** A rule that asks for ten minutes of open windows, in which people follow six times of ten. */
function rule(
  name: string,
  rooms: readonly string[],
  delay: string,
  tell: string,
  when: readonly Readonly<Record<string, unknown>>[],
): OfferedRule {
  return {
    ...{ name, rooms, when, 'on delay': delay, gate: 'when present' },
    ...{ 'quiet hours': '22:00-07:00', 'most a day': 4 },
    response: [{ tell }, { open: 'here', lasts: '10 min', probability: '60 %', delay: '5 min' }],
  };
}
