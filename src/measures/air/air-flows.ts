import type { AirTerm, Ledger } from '../../engine/ledger/ledger.ts';
import type { Home } from '../../home/home.ts';
import { ledgerSum } from '../ledger-sum.ts';
import type { AirFlow, OutdoorAirMeasures } from '../plan-measures.ts';

/** Mean flows of air over some months. */
export interface AirFlows {
  /** Air from outdoors into the whole home, and the way it takes. [L/s] */
  readonly home: OutdoorAirMeasures;
  /** Straight from outdoors into each room. [L/s] */
  readonly intoRooms: readonly number[];
  /** Share of all air from outdoors that enters by each storey; 0 where none enters at all. [-] */
  readonly shareByStorey: Readonly<Record<string, number>>;
  /** Between rooms and with outdoors, both directions, none of them 0. */
  readonly between: readonly AirFlow[];
}

/**
 * Mean flows of the air that a run booked, as volume of air at 20 °C, so that what goes into a room
 * comes out of it.
 *
 * @param rows     of the ledger
 * @param seconds  that they hold
 */
export function airFlows(
  { rooms, doorways }: Pick<Home, 'rooms' | 'doorways'>,
  ledger: Ledger,
  rows: readonly number[],
  seconds: number,
): AirFlows {
  const rate = (cubicMetres: number): number => (seconds > 0 ? (1000 * cubicMetres) / seconds : 0);
  const way = (terms: readonly AirTerm[], room?: number): number =>
    rate(terms.reduce((sum, term) => sum + ledgerSum(ledger.air[term], rows, ledger, room), 0));
  const intoRooms = rooms.map((_, i) => way(INTO, i));
  const flows = rooms.flatMap(({ name }, i): AirFlow[] => [
    { from: OUTDOORS, to: name, l_per_s: intoRooms[i]! },
    { from: name, to: OUTDOORS, l_per_s: way(OUT_OF, i) },
  ]);
  const through = ({ forth, back }: Ledger['doorways'], d: number): [number, number] => {
    const sum = (all: Float64Array): number =>
      rate(rows.reduce((total, row) => total + all[row * doorways.length + d]!, 0));
    return [sum(forth), sum(back)];
  };
  const passed = doorways.flatMap(({ rooms: [a, b] }, d): AirFlow[] => {
    const [forth, back] = through(ledger.doorways, d);
    const [from, to] = [rooms[a]!.name, rooms[b]!.name];
    return [
      { from, to, l_per_s: forth },
      { from: to, to: from, l_per_s: back },
    ];
  });
  return {
    home: {
      l_per_s: way(INTO),
      leaks_l_per_s: way(['leaksIn']),
      windows_l_per_s: way(['windowsIn']),
      fans_l_per_s: way(['fansIn']),
    },
    intoRooms,
    shareByStorey: shares(rooms, intoRooms),
    between: joined([...flows, ...passed]),
  };
}

function shares(rooms: Home['rooms'], into: readonly number[]): Record<string, number> {
  const all = into.reduce((sum, flow) => sum + flow, 0);
  const storeys = [...new Set(rooms.map(({ storey = 0 }) => storey))].sort((a, b) => a - b);
  return Object.fromEntries(
    storeys.map((own) => {
      const entered = into.reduce(
        (sum, flow, i) => ((rooms[i]!.storey ?? 0) === own ? sum + flow : sum),
        0,
      );
      return [String(own), all > 0 ? entered / all : 0];
    }),
  );
}

/** Flows by the same two ends are one, and what nothing passes is left out. */
function joined(flows: readonly AirFlow[]): AirFlow[] {
  const sums = new Map<string, AirFlow>();
  for (const flow of flows) {
    const key = JSON.stringify([flow.from, flow.to]);
    const more = sums.get(key)?.l_per_s ?? 0;
    sums.set(key, { ...flow, l_per_s: flow.l_per_s + more });
  }
  return [...sums.values()].filter(({ l_per_s }) => l_per_s > 0);
}

/** What the air outside is called where rooms are named; no room can be called so. */
const OUTDOORS = 'outdoors';
const INTO = ['leaksIn', 'windowsIn', 'fansIn'] as const;
const OUT_OF = ['leaksOut', 'windowsOut', 'extracts', 'draught'] as const;
