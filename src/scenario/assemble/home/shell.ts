import type { Element, Opening, Pane } from '../../../home/home.ts';
import { OPENABLE, OPENING_HEIGHT, WINDOW_SHARE, WINDOW_SOURCE } from '../../presets/rooms.ts';
import type { Finding } from '../../unplaced-problem.ts';
import { outerWalls, type RoomPlan } from '../room-plans.ts';
import { drawnElements } from './drawn-elements.ts';
import { givenElements } from './given-elements.ts';
import type { ShellContext } from './shell-context.ts';

/** What surrounds one room. */
export interface Shell {
  readonly elements: readonly Element[];
  readonly panes: readonly Pane[];
  readonly openings: readonly Opening[];
}

export function roomShell(plan: RoomPlan, context: ShellContext): Shell {
  const panes = roomPanes(plan, context);
  const elements =
    plan.data.elements === undefined
      ? drawnElements(plan, panes, context)
      : givenElements(plan, context);
  return { elements, panes, openings: roomOpenings(plan, panes, context) };
}

function roomPanes(plan: RoomPlan, { facts, defaults }: ShellContext): Pane[] {
  const { name, index, area, faces, data } = plan;
  const share = plan.data['outer sides'] === 0 ? 0 : WINDOW_SHARE[plan.use];
  const walls = data.elements === undefined ? outerWalls(plan, facts, defaults) : null;
  const wall = walls?.reduce((sum, one) => sum + one.area, 0) ?? Number.POSITIVE_INFINITY;
  const likely = Number(Math.min(share * area, MOST_GLASS * wall).toPrecision(2));
  const high = Math.min(likely * 1.5, Math.max(likely, ALL_GLASS * wall));
  const preset = { value: likely, low: likely * 0.6, high, source: WINDOW_SOURCE };
  const drawn = share > 0 && (data.elements === undefined || data.elements.length > 0);
  return (data.panes ?? (drawn ? [{}] : [])).map((pane, k) => ({
    name: pane.name ?? `${name} window${k === 0 ? '' : ` ${k + 1}`}`,
    room: index,
    area: defaults.number(['home', 'rooms', name, 'panes', k, 'area'], pane.area, preset),
    uValue: pane['u-value'] ?? facts.windowUValue,
    gValue: pane['g-value'] ?? facts.windowGValue,
    frameShare: pane.frame ?? facts.frame,
    unshaded: 1 - (pane.shading ?? facts.shading),
    azimuth: pane.faces ?? faces,
    tilt: pane.tilt ?? 90,
  }));
}

function roomOpenings(plan: RoomPlan, panes: readonly Pane[], context: ShellContext): Opening[] {
  const { name, index, faces, data } = plan;
  const first = panes[0];
  const given = data.openings ?? (first === undefined ? [] : [{}]);
  const glass = first?.area ?? 1;
  const preset = {
    value: Number((OPENABLE.value * glass).toPrecision(2)),
    low: OPENABLE.low * glass,
    high: OPENABLE.high * glass,
    source: 'common practice: 40 % of the window',
  };
  return given.map((opening, k) => {
    const at = (key: string) => ['home', 'rooms', name, 'openings', k, key];
    const height = context.defaults.number(at('height'), opening.height, OPENING_HEIGHT);
    const head = opening.head ?? Math.min(context.facts.windowHead, plan.height);
    context.findings.push(...tooHigh(opening, height, plan, at));
    return {
      name: opening.name ?? `${name} window${k === 0 ? '' : ` ${k + 1}`}`,
      room: index,
      area: context.defaults.number(at('area'), opening.area, preset),
      height,
      head: Math.max(head, height),
      azimuth: opening.faces ?? first?.azimuth ?? faces,
    };
  });
}

/** An opening that is higher than its room, or whose upper edge is above or below where it can be. */
function tooHigh(
  { head }: { readonly head?: number | undefined },
  height: number,
  plan: RoomPlan,
  at: (key: string) => Finding['path'],
): Finding[] {
  const room = `${plan.height} m`;
  if (height > plan.height) {
    const expected = `no more than the height of the room (${room})`;
    return [{ path: at('height'), expected, got: `${height} m` }];
  }
  if (head === undefined || (head <= plan.height && head >= height)) return [];
  const expected = `between the height of the opening (${height} m) and that of the room (${room})`;
  return [{ path: at('head'), expected, got: `${head} m` }];
}

/** Share of its outer walls that the window nobody gave takes at most, as in rooms larger than most. [-] */
const MOST_GLASS = 0.8;
const ALL_GLASS = 0.99;
