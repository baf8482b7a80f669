import type { ScenarioData } from '../../model/scenario-model.ts';
import type { Finding } from '../../unplaced-problem.ts';
import { type BlindsEntry, panesOf } from './blinds.ts';
import type { BuiltHome } from './build-home.ts';

/** Blinds over panes that are not there or have some already, and blinds that nothing closes. */
export function blindFindings(data: ScenarioData, { home, plans }: BuiltHome): Finding[] {
  const taken = new Map<number, number>();
  return (data.blinds ?? []).flatMap((entry, k): Finding[] => {
    const over = panesOf(entry, plans, home.panes);
    const findings = [...whenFindings(entry, k), ...roomFindings(entry, k, { home, plans })];
    if (entry.pane !== undefined && over.length === 0) {
      const names = home.panes.map(({ name }) => name);
      const expected = `a pane: ${names.join(', ')}`;
      findings.push({ path: ['blinds', k, 'pane'], expected, names });
    }
    const twice = over.find((pane) => taken.has(pane));
    if (twice !== undefined) {
      const path = ['blinds', k, placeOf(entry)];
      const got = `${home.panes[twice]!.name}, which has those of #${taken.get(twice)! + 1}`;
      findings.push({ path, expected: 'panes without other blinds', got });
    }
    for (const pane of over) if (!taken.has(pane)) taken.set(pane, k);
    return findings;
  });
}

function whenFindings(entry: BlindsEntry, k: number): Finding[] {
  const { hours, 'sun over': sun, 'temperature over': warmth } = entry;
  if (hours !== undefined || sun !== undefined || warmth !== undefined) return [];
  const expected = 'at least one of: hours; sun over; temperature over, which close it';
  return [{ path: ['blinds', k], expected, got: 'none of them' }];
}

/** Rooms that are named and have no pane; a home without any where all are meant. */
function roomFindings(
  { room, rooms }: BlindsEntry,
  k: number,
  { home, plans }: Pick<BuiltHome, 'home' | 'plans'>,
): Finding[] {
  const bare = (name: string): boolean =>
    !home.panes.some((pane) => plans[pane.room]!.name === name);
  const expected = 'a room with a pane';
  if (rooms === 'all') {
    if (home.panes.length > 0) return [];
    return [{ path: ['blinds', k, 'rooms'], expected, got: 'a home without any' }];
  }
  if (room !== undefined && bare(room)) {
    return [{ path: ['blinds', k, 'room'], expected, got: `${room}, which has none` }];
  }
  if (rooms?.length === 0) {
    return [{ path: ['blinds', k, 'rooms'], expected: 'at least one room', got: 'an empty list' }];
  }
  return (rooms ?? []).flatMap((name, n) =>
    bare(name)
      ? [{ path: ['blinds', k, 'rooms', n], expected, got: `${name}, which has none` }]
      : [],
  );
}

const placeOf = ({ pane, room }: BlindsEntry): string =>
  pane !== undefined ? 'pane' : room !== undefined ? 'room' : 'rooms';
