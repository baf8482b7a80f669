import { BLIND_KINDS } from '../choices.ts';
import { hours } from './clock-fields.ts';
import { choice, either, list, quantity, section, text } from './fields.ts';

const ROOMS_WORDS = 'all, or a list of room names';

const blindModel = section(
  {
    pane: text('Name of the one pane that the blind hangs over', {
      eg: 'living window',
    }).optional(),
    room: text('Name of a room, over all of whose panes a blind hangs', {
      eg: 'bedroom',
    }).optional(),
    rooms: either(
      [
        choice(['all'], 'Every room'),
        list(text('Name of a room', { eg: 'bedroom' }), ROOMS_WORDS, 'Rooms'),
      ],
      ROOMS_WORDS,
      'Rooms over all of whose panes blinds hang, or all',
      { eg: ['living', 'bedroom'] },
    ).optional(),
    kind: choice(
      BLIND_KINDS,
      'What kind of blind it is, which says whether it hangs inside and what it keeps off',
      { usual: 'inside blind' },
    ).optional(),
    'g share': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the g-value of the pane that is left when the blind is closed',
      { eg: 0.25, otherwise: 'by the kind of blind' },
    ).optional(),
    'u share': quantity(
      '-',
      { min: 0, max: 1 },
      'Share of the heat transmittance of the pane that is left when the blind is closed',
      { eg: 0.9, otherwise: 'by the kind of blind and the pane' },
    ).optional(),
    hours: hours('When the blind may be closed, outside which it is open', {
      eg: '22:00-07:00',
      otherwise: 'always',
    }).optional(),
    'sun over': quantity(
      'W/m2',
      { min: 0, max: 1500 },
      'Sunshine on the plane of the pane, above which alone the blind is closed',
      { eg: '150 W/m2', otherwise: 'no matter' },
    ).optional(),
    'temperature over': quantity(
      '°C',
      { min: -20, max: 50 },
      'Temperature of the room, above which alone the blind is closed',
      { eg: '24 °C', otherwise: 'no matter' },
    ).optional(),
  },
  'One blind, with one of pane, room, rooms, and at least one of hours, sun over, temperature over',
  { eg: { room: 'bedroom', kind: 'roller shutter', hours: '22:00-07:00' } },
);

export const blindsModel = list(
  blindModel,
  'a list of blinds, each with pane, room or rooms',
  'Shutters, blinds and curtains over panes, and when they are closed',
  { otherwise: 'none' },
);
