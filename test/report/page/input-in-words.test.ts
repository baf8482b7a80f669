import { expect, test } from 'vitest';
import { inputInWords } from '../../../src/report/page/input-in-words.ts';

const HOME = {
  household: { activities: [{ what: 'shower' }] },
  rules: [
    { name: 'stale', response: [{ tell: 'open up' }, { open: 'den', probability: 0.8 }] },
    { name: 'damp', response: [{ tell: 'dry' }] },
  ],
};

test.each([
  [
    '/rules/0/response/1/probability',
    'how likely somebody acts when rule "stale" says to open den',
    '',
  ],
  ['/rules/0/response/1/delay', 'how late somebody acts when rule "stale" says to open den', 'min'],
  ['/heating/season/mean below', 'heating begins when outdoor days are colder than', '°C'],
  ['/household/bodies/awake/water', 'water from a person awake', 'g/h'],
  ['/household/bodies/asleep/co2', 'CO2 from a person asleep', 'm³/h'],
  ['/household/bodies/awake/tvoc', 'TVOC from a person awake', 'µg/h'],
  ['/household/activities/0/water', 'water each time, shower', ''],
  ['/heating/rooms/den/sensor/bias', 'thermostat reads too much, den', 'K'],
  ['/home/rooms/den/panes/0/area', 'window, den', 'm²'],
  ['/home/rooms/den/openings/0/height', 'height of the part of the window that opens, den', 'm'],
  ['/home/height', 'height of the rooms', 'm'],
  ['/sensors/humidity/bias', 'error of the humidity sensors', 'points'],
  ['/sensors/humidity/every', 'time between readings of humidity', 'min'],
  ['/sensors/temperature/lag', 'lag of the temperature sensors', 'min'],
  ['/home/build/front', 'direction that the front faces', '°'],
  ['/heating/sensor/radiant share', 'how much of the walls a thermostat feels', ''],
  ['/cooling/coil/temperature', 'temperature of the cooling coil', '°C'],
  ['/home/build/exposed floor u-value', 'U-value of floors over open air', 'W/m²K'],
])('%s', (pointer, name, unit) => expect(inputInWords(pointer, HOME)).toEqual({ name, unit }));
