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
 * Pressures of all rooms by Newton's method, with flows written as functions of pressures, dense and
 * damped by halving, to rounding. Begins where it ended before.
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
  let known = new Array<number>(n).fill(0);
  const flow = new Array<number>(paths.length).fill(0);
  const slope = new Array<number>(paths.length).fill(0);

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
    /** Flows and slopes at these pressures; what each room has left over. [kg/s] */
    const leftAt = (p: readonly number[]): number[] => {
      const left = p.map(() => 0);
      paths.forEach(({ to, from }, k) => {
        const dp = drive[k]! + (from < 0 ? 0 : p[from]!) - p[to]!;
        const rho = dp > 0 ? (from < 0 ? outside : density[from]!) : density[to]!;
        const [friction, inertia] = laws[k]!;
        const root = Math.sqrt(friction * friction + 4 * inertia * rho * Math.abs(dp));
        // The positive root in a form that holds without inertia too.
        flow[k] = friction === Infinity ? 0 : (rho * 2 * dp) / (friction + root);
        slope[k] = friction === Infinity ? 0 : rho / root;
        left[to]! += flow[k]!;
        if (from >= 0) left[from]! -= flow[k]!;
      });
      return left;
    };
    const size = (list: readonly number[]): number => Math.max(...list.map(Math.abs));
    let left = leftAt(known);
    for (let k = 0; k < 40 && size(left) > 1e-9; k++) {
      const a = known.map(() => new Array<number>(n).fill(0));
      paths.forEach(({ to, from }, j) => {
        a[to]![to]! += slope[j]!;
        if (from < 0) return;
        a[from]![from]! += slope[j]!;
        a[to]![from]! -= slope[j]!;
        a[from]![to]! -= slope[j]!;
      });
      const step = solveDense(a, left);
      const before = size(left);
      const start = known;
      for (let part = 1; part > 0.01; part /= 2) {
        known = start.map((x, i) => x + part * step[i]!);
        left = leftAt(known);
        if (size(left) < before) break;
      }
      // Rounding leaves no more to gain.
      if (size(left) >= before) break;
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
/** Dry air in a cubic metre at 20 °C and 50 %. [kg/m3] */
const REFERENCE = dryAirDensity(20, humidityRatioFromRelativeHumidity(20, 50, 101_325), 101_325);
