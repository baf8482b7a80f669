import { expect, test } from 'vitest';
import { factsOfScenario } from '../../../src/scenario/start/plan-facts.ts';
import { planOffers } from '../../../src/scenario/start/plan-offers.ts';

test.each([
  ['living', 'the living room'],
  ['bedroom', 'the bedroom'],
  ['bedroom 2', 'bedroom 2'],
])('plans name a room called %s as sentences do', (room, words) => {
  const facts = factsOfScenario({ home: { rooms: { [room]: {} } }, heating: { setpoint: 20 } });
  const offers = planOffers(facts, ['damp', 'dry', 'cold', 'heat', 'air'], 99);
  const told = offers
    .filter(({ description }) => description.includes(room))
    .map(({ name, description }) => [name, description]);
  expect(Object.fromEntries(told)).toEqual({
    dehumidifier: `a dehumidifier in ${words} keeps it near 55 %`,
    humidifier: `a humidifier in ${words} keeps it near 45 %`,
    purifier: `an air purifier in ${words}`,
    'plug-in-heater': `a plug-in heater keeps ${words} at 20 °C while somebody is in it`,
    'air-conditioner': `an air conditioner in ${words}, its hot part outdoors, keeps it at 25 °C or less`,
  });
});
