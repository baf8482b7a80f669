import { hours } from './clock-fields.ts';
import { choice, either, list, quantity, section, text } from './fields.ts';

export const BLIND_KINDS = [
  'roller shutter',
  'outside slats',
  'outside screen',
  'inside blind',
  'curtain',
] as const;

const ROOMS_WORDS = 'all, or a list of room names';

const blindModel = section(
  {
    pane: text('Name of one pane').optional(),
    room: text('Name of a room; over all its panes').optional(),
    rooms: either(
      [choice(['all'], 'Every room'), list(text('Name of a room'), ROOMS_WORDS, 'Rooms')],
      ROOMS_WORDS,
      'Several rooms',
    ).optional(),
    kind: choice(
      BLIND_KINDS,
      'What it is; says whether it hangs inside, and what nobody gives below',
    ).optional(),
    'g share': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the g-value that is left when it is closed',
    ).optional(),
    'u share': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the U-value that is left when it is closed',
    ).optional(),
    hours: hours('When it may be closed; outside them it is open').optional(),
    'sun over': quantity(
      'W/m2',
      { min: 0, max: 1500 },
      'Closed only while more sun than this falls on the plane of the pane',
    ).optional(),
    'temperature over': quantity(
      '°C',
      { min: -20, max: 50 },
      'Closed only while the air of the room is warmer than this',
    ).optional(),
  },
  'One kind of blind; one of pane, room, rooms, and at least one of hours, sun over, temperature over',
);

export const blindsModel = list(
  blindModel,
  'a list of blinds, each with pane, room or rooms',
  'Shutters, blinds and curtains that are closed over panes, and when',
);
