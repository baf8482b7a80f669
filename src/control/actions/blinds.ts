import type { Home } from '../../home/home.ts';
import type { Automation } from '../automation.ts';
import type { Commands, Observation } from '../observations.ts';

/**
 * Keeps blinds open in their hours until sun and room are above the levels that were given for them.
 *
 * Each level has a band below it, so that a blind does not move at every step: what was above the
 * level counts as above it until the sun is at or below half of it, or the room a kelvin below it.
 * To be called once a step, with the hours in `commands.blinds`. Allocates nothing.
 */
export function createBlinds(
  { panes, blinds = [] }: Pick<Home, 'panes' | 'blinds'>,
  automation: Pick<Automation, 'blinds'>,
): (observed: Observation, commands: Commands) => void {
  const controls = automation.blinds ?? [];
  const room = Int32Array.from(blinds, ({ pane }) => panes[pane]!.room);
  const sunAbove = Float64Array.from(controls, (control) => control.sunAbove);
  const roomAbove = Float64Array.from(controls, (control) => control.roomAbove);
  const sunny = new Uint8Array(controls.length);
  const warm = new Uint8Array(controls.length);
  return ({ sun, temperature }, commands) => {
    for (let b = 0; b < controls.length; b++) {
      const shines = sun[b]!;
      const over = temperature[room[b]!]!;
      if (shines > sunAbove[b]!) sunny[b] = 1;
      else if (shines <= SUN_LEFT * sunAbove[b]!) sunny[b] = 0;
      if (over > roomAbove[b]!) warm[b] = 1;
      else if (over <= roomAbove[b]! - ROOM_BAND) warm[b] = 0;
      if (sunny[b] === 0 || warm[b] === 0) commands.blinds[b] = 0;
    }
  };
}

/** Share of its level at which the sun no longer counts as above it; own choice. [-] */
const SUN_LEFT = 0.5;
/** How far under its level a room no longer counts as above it; own choice. [K] */
const ROOM_BAND = 1;
