import type { Home } from '../../../../src/home/home.ts';
import { wallPressureCoefficient } from '../../../../src/physics/airflow/wall-pressure-coefficient.ts';
import { humidityRatioFromRelativeHumidity } from '../../../../src/physics/moist-air/humidity-ratio.ts';
import { dryAirDensity } from '../../../../src/physics/moist-air/moist-air-volume.ts';
import { solveDense } from './solve-dense.ts';

/** What drives air through a home at one instant. */
export interface Weather {
  /** [°C] */
  readonly outdoor: number;
  readonly rooms: readonly number[];
  /** [m/s] */
  readonly wind: number;
  /** Open shares. */
  readonly openings: readonly number[];
  readonly doorways: readonly number[];
}

/** Mass flows: into the rooms of cracks and openings, and from the first to the second room of doorways. [kg/s] */
export interface Flows {
  readonly cracks: readonly number[];
  readonly openings: readonly number[];
  readonly doorways: readonly number[];
}

interface Path {
  readonly to: number;
  readonly from: number;
  readonly height: number;
  /** Pressure coefficient. */
  readonly cp: number;
  /** Friction [Pa s/m3], and inertia over the density [Pa s2 m-3/kg], by how far it stands open. */
  readonly law: (open: number) => readonly [number, number];
}

/**
 * Flows at which every room balances, by Newton's method on flows and pressures together, dense, to
 * rounding. Begins where it ended before.
 *
 * @param windFrom  [deg]
 */
export function flowsByPressures(home: Home, windFrom: number): (weather: Weather) => Flows {
  const paths = pathsOf(home, windFrom);
  const open = paths.map(() => Number.NaN);
  const laws = paths.map(({ law }) => law(1));
  const n = home.rooms.length;
  const cracks = home.leakage.how.by === 'pressure' ? home.leakage.how.cracks.length : 0;
  const windows = cracks + home.openings.length;
  const doors = windows + home.doorways.length;
  const flow = new Array<number>(paths.length).fill(0);
  const slope = new Array<number>(paths.length).fill(0);
  const fixed = new Array<number>(paths.length).fill(0);

  return ({ outdoor, rooms, wind, openings, doorways }) => {
    const outside = densityOf(outdoor);
    const density = rooms.map(densityOf);
    const dynamic = 0.5 * outside * ((home.windRatio ?? 1) * wind) ** 2;
    const above = (room: number, z: number): number => 9.80665 * (outside - density[room]!) * z;
    const drive = paths.map(({ to, from, height, cp }) =>
      from < 0 ? dynamic * cp - above(to, height) : above(from, height) - above(to, height),
    );
    paths.forEach(({ law }, k) => {
      const share =
        k < cracks ? 1 : k < windows ? openings[k - cracks]! : (doorways[k - windows] ?? 1);
      if (share !== open[k]) laws[k] = law(share);
      open[k] = share;
    });
    const lightness = (k: number): number => {
      const { to, from } = paths[k]!;
      const source = flow[k]! < 0 ? to : from;
      return 1 / (source < 0 ? outside : density[source]!);
    };
    for (let round = 0; ; round++) {
      const a = rooms.map(() => new Array<number>(n).fill(0));
      const b = rooms.map(() => 0);
      paths.forEach(({ to, from }, k) => {
        const [friction, inertia] = laws[k]!;
        const q = flow[k]!;
        const [straight, bent] = [friction * lightness(k), inertia * lightness(k)];
        // A path at rest begins with the chord to a gram a second.
        slope[k] = 1 / (straight + bent * (q === 0 ? AT_REST : 2 * Math.abs(q)));
        if (friction === Infinity) slope[k] = 0;
        const drop = (straight + bent * Math.abs(q)) * q;
        fixed[k] = slope[k] === 0 ? 0 : q + slope[k]! * (drive[k]! - drop);
        a[to]![to]! += slope[k]!;
        b[to]! += fixed[k]!;
        if (from < 0) return;
        a[from]![from]! += slope[k]!;
        a[to]![from]! -= slope[k]!;
        a[from]![to]! -= slope[k]!;
        b[from]! -= fixed[k]!;
      });
      const p = solveDense(a, b);
      let change = 0;
      paths.forEach(({ to, from }, k) => {
        const across = (from < 0 ? 0 : p[from]!) - p[to]!;
        const next = fixed[k]! + slope[k]! * across;
        change = Math.max(change, Math.abs(next - flow[k]!));
        // Beyond a dozen rounds lines flip to and fro about zero: half of the way ends that.
        flow[k] = round < 12 ? next : (flow[k]! + next) / 2;
      });
      if (change < 1e-11) break;
      if (round > 100) throw new Error('flowsByPressures: no convergence');
    }
    return {
      cracks: flow.slice(0, cracks),
      openings: flow.slice(cracks, windows),
      doorways: flow.slice(windows, doors),
    };
  };
}

function pathsOf(
  { rooms, leakage: { how, share }, openings, doorways }: Home,
  windFrom: number,
): Path[] {
  const floor = (room: number): number => rooms[room]!.elevation ?? 0;
  const facing = (azimuth: number): number => wallPressureCoefficient(windFrom - azimuth);
  const cracks = how.by === 'rate' ? [] : how.cracks;
  return [
    ...cracks.map(({ room, height, azimuth, pressureCoefficient, flowAt1, flowAt10 }): Path => {
      const b = (10 / flowAt10 - 1 / flowAt1) / (flowAt10 - flowAt1);
      // What inertia does grows with the density; cracks were measured with the reference air.
      const law = [1 / flowAt1 - b * flowAt1, b / REFERENCE] as const;
      const cp = azimuth === null ? pressureCoefficient : facing(azimuth);
      return { to: room, from: -1, height, cp, law: () => law };
    }),
    ...openings.map(({ room: to, area, height, head = 2.1, azimuth }): Path => {
      const middle = floor(to) + head - height / 2;
      return {
        to,
        from: -1,
        height: middle,
        cp: facing(azimuth),
        law: (open) => hole(open * area),
      };
    }),
    ...doorways.map(({ rooms: [from, to], width, height: tall }): Path => {
      const level = Math.abs(floor(from) - floor(to)) < 1;
      const height = Math.max(floor(from), floor(to)) + (level ? tall / 2 : 0);
      return { to, from, height, cp: 0, law: (open) => hole(open * width * tall + 0.01) };
    }),
    // Rooms breathe a little however tight they are, and wind and warmth do not move that.
    ...share.map((part, to): Path => {
      const law = [1 / (1e-8 * Math.max(part, 1e-3)), 0] as const;
      return { to, from: -1, height: 0, cp: 0, law: () => law };
    }),
  ];
}

/** Bernoulli, and a straight line below about a millionth of a pascal. */
function hole(area: number): readonly [number, number] {
  if (area === 0) return [Infinity, 0];
  const inertia = 1 / (2 * (0.6 * area) ** 2);
  return [Math.sqrt(1e-6 * inertia), inertia];
}

const densityOf = (temperature: number): number => 101_325 / (287.042 * (temperature + 273.15));
const AT_REST = 0.001; // kg/s
/** Dry air in a cubic metre at 20 °C and 50 %. [kg/m3] */
const REFERENCE = dryAirDensity(20, humidityRatioFromRelativeHumidity(20, 50, 101_325), 101_325);
