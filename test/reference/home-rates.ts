import type { Home } from '../../src/home/home.ts';
import { doorwayExchange } from '../../src/physics/airflow/doorway-exchange.ts';
import { singleSidedAiring } from '../../src/physics/airflow/single-sided-airing.ts';
import { outputAtExcess } from '../../src/physics/heating/radiator-output.ts';
import {
  humidityRatioFromRelativeHumidity,
  vapourPressureFromHumidityRatio,
} from '../../src/physics/moist-air/humidity-ratio.ts';
import { latentHeat } from '../../src/physics/moist-air/latent-heat.ts';
import { moistAirHeatCapacity } from '../../src/physics/moist-air/moist-air-heat-capacity.ts';
import { dryAirDensity } from '../../src/physics/moist-air/moist-air-volume.ts';
import { saturationPressure } from '../../src/physics/moist-air/saturation-pressure.ts';
import { type Coils, coilsOf } from './home-coils.ts';
import type { Now } from './home-now.ts';
import { homePlaces } from './home-places.ts';
import { flowsByPressures } from './physics/airflow/room-pressures.ts';
import { solAirTemperature } from './physics/heat/sol-air-temperature.ts';

/** What emitters and coolers of a room do: nothing, what holds the air where it is, all they can. */
export type Valve = 'shut' | 'holding' | 'open' | 'cooling' | 'cooling most';

/** Outdoors at one instant. */
export interface Outside {
  readonly temperature: number;
  readonly humidityRatio: number;
  readonly wind: number;
  /** Ground temperature of the year, under floors. [°C] */
  readonly ground: number;
}

/** The model's equations written out once more, in continuous time and without any cleverness. */
export function homeRates(home: Home) {
  const n = home.rooms.length;
  const chains = [
    ...home.elements.map((e) => ({
      ...e,
      capacity: e.chain.capacity,
      resistance:
        e.far.to === 'nothing'
          ? [...e.chain.resistance.slice(0, -1), Infinity]
          : e.chain.resistance,
    })),
    ...home.rooms.flatMap(({ mass: { area, capacity } }, room) =>
      area > 0
        ? [
            {
              ...{ room, area, kind: 'mass' as const, far: { to: 'nothing' as const } },
              ...{ resistance: [0.13, Infinity], capacity: [capacity / area] },
            },
          ]
        : [],
    ),
  ];
  const places = homePlaces(
    n,
    chains.map((c) => c.capacity.length),
    home.species.length,
  );
  const w20 = humidityRatioFromRelativeHumidity(20, 50, PRESSURE);
  const density = dryAirDensity(20, w20, PRESSURE);
  const heatOfAir = moistAirHeatCapacity(w20);
  const evaporation = latentHeat(20);
  const facesOf = facesByRoom(n, chains, places.chain);
  const areaOf = (list: readonly { area: number }[]): number =>
    list.reduce((sum, { area }) => sum + area, 0);
  const floors = facesOf.map((list) => list.filter((face) => face.isFloor));
  const facesAt = facesOf.map((list, i) => {
    const byNode = new Map<number, (Face & { readonly ofSun: number })[]>();
    for (const face of list) {
      const part = face.area / areaOf(list);
      const onFloor = face.isFloor ? face.area / areaOf(floors[i]!) / 2 : 0;
      const ofSun = floors[i]!.length > 0 ? part / 2 + onFloor : part;
      byNode.set(face.node, [...(byNode.get(face.node) ?? []), { ...face, ofSun }]);
    }
    return byNode;
  });
  // A pane is (air A + radiant R + outdoors K) / (A + R + K) warm, by its conductances.
  const glassOf = home.rooms.map((_, i) =>
    home.panes
      .filter((p) => p.room === i)
      .map(({ uValue, area, tilt }) => {
        const [air, radiant] = [area * (1 / 0.13 - LONG_WAVE), area * LONG_WAVE];
        const out = area / (1 / uValue - 0.13);
        const lost = 0.04 * skyLossOf(tilt);
        return { uValue, area, air, radiant, out, all: air + radiant + out, lost };
      }),
  );
  const emitters = home.rooms.map((_, i) => home.emitters.filter((e) => e.room === i));
  const radiantShare = emitters.map((list) => list[0]?.radiantShare ?? 0);

  const most = (room: number, t: number): number =>
    emitters[room]!.reduce((sum, e) => {
      const excess = Math.max(0, home.sources[e.source]!.waterTemperature - t);
      return (
        sum +
        (e.ratedExcess === 0
          ? e.ratedPower
          : outputAtExcess(e.ratedPower, e.ratedExcess, e.exponent, excess))
      );
    }, 0);

  const air = { density, heatOfAir, evaporation, pressure: PRESSURE };
  const coolers = home.rooms.map((_, i) => (home.cooling ?? []).filter((c) => c.room === i));
  /** What the coolers of a room can do with its air as it is. */
  const coils = (y: readonly number[], i: number): Coils =>
    coilsOf(coolers[i]!, y[places.air(i)]!, y[places.humidity(i)]!, air);

  const blowing = flowsByPressures(home, 0);

  /** Rates of change of the whole vector, and the heat that each room is given, less than 0 if cooled. [1/s], [W] */
  function rates(y: readonly number[], now: Now, out: Outside, valves: readonly Valve[]) {
    const dy = new Array<number>(places.size).fill(0);
    const t = home.rooms.map((_, i) => y[places.air(i)]!);
    const w = home.rooms.map((_, i) => y[places.humidity(i)]!);
    const toAir = new Array<number>(n).fill(0); // [W]
    const water = new Array<number>(n).fill(0); // [kg/s]
    const gained = home.species.map(() => new Array<number>(n).fill(0)); // [unit m3/s]
    const c = (q: number, i: number): number => y[places.species(q, i)]!;

    const fromOutdoors = (i: number, flow: number, survives: (q: number) => number): void => {
      toAir[i]! += density * heatOfAir * flow * (out.temperature - t[i]!);
      water[i]! += density * flow * (out.humidityRatio - w[i]!);
      home.species.forEach(({ outdoor }, q) => {
        gained[q]![i]! += flow * (survives(q) * outdoor - c(q, i));
      });
    };
    const { how, share } = home.leakage;
    const blown = blowing({
      ...{ outdoor: out.temperature, rooms: t, wind: out.wind },
      ...{ openings: now.openings, doorways: now.doorways },
    });
    const leaks = how.by === 'rate' ? [] : how.cracks;
    leaks.forEach(({ room }, k) => {
      fromOutdoors(
        room,
        Math.max(0, blown.cracks[k]!) / density,
        (q) => home.species[q]!.penetration,
      );
    });
    if (how.by === 'rate') {
      share.forEach((part, i) => {
        fromOutdoors(i, part * how.flow, (q) => home.species[q]!.penetration);
      });
    }
    home.openings.forEach(({ room, area, height }, o) => {
      const open = area * now.openings[o]!;
      const alone = singleSidedAiring(open, height, out.wind, t[room]! - out.temperature);
      const { forth } = bothWays(alone, blown.openings[o]! / density);
      fromOutdoors(room, forth, (q) => home.species[q]!.windowPenetration ?? 1);
    });
    home.doorways.forEach(({ rooms: [a, b], width, height, mixing, shut }, d) => {
      const part = now.doorways[d]!;
      const byWarmth = doorwayExchange(part * width, height, t[a]! - t[b]!, (t[a]! + t[b]!) / 2);
      const alone = shut + (part > 0 ? Math.max(part * mixing, byWarmth) : 0);
      const { forth, back } = bothWays(alone, blown.doorways[d]! / density);
      for (const [i, j, flow] of [
        [a, b, back],
        [b, a, forth],
      ] as const) {
        toAir[i]! += density * heatOfAir * flow * (t[j]! - t[i]!);
        water[i]! += density * flow * (w[j]! - w[i]!);
        home.species.forEach((_, q) => {
          gained[q]![i]! += flow * (c(q, j) - c(q, i));
        });
      }
    });
    const radiant = new Array<number>(n).fill(0);
    const sunny = new Array<number>(n).fill(0);
    home.rooms.forEach((room, i) => {
      const { capacity, conductance, deep } = room.buffer;
      const p = vapourPressureFromHumidityRatio(w[i]!, PRESSURE);
      const saturated = saturationPressure(t[i]!);
      const surface = y[places.buffer(i)]!;
      const onwards = deep.conductance * saturated * (surface - y[places.deep(i)]!);
      const uptake = (capacity > 0 ? conductance : 0) * (p - saturated * surface);
      dy[places.buffer(i)] = capacity > 0 ? (uptake - onwards) / capacity : 0;
      dy[places.deep(i)] = deep.capacity > 0 ? onwards / deep.capacity : 0;
      water[i]! += now.vapour[i]! + now.drying[i]! - uptake;
      toAir[i]! += evaporation * (uptake - now.drying[i]!);
      const sun = now.throughPanes[i]!;
      radiant[i] = 0.5 * now.peopleHeat[i]! + 0.4 * now.applianceHeat[i]!;
      sunny[i] = (1 - room.sunToAir) * sun;
      toAir[i]! += now.peopleHeat[i]! + now.applianceHeat[i]! - radiant[i]! + sun - sunny[i]!;
      home.species.forEach((_, q) => {
        gained[q]![i]! += now.species[q]![i]! - (room.deposition[q] ?? 0) * room.volume * c(q, i);
      });
    });
    /** Heat to the air from all surfaces of a room, if so much radiates onto them; and their mean. */
    const fromSurfaces = (i: number, onto: number): { toAir: number; radiant: number } => {
      const faces = facesOf[i]!;
      const glass = glassOf[i]!;
      if (faces.length === 0) {
        const through = glass.reduce((sum, p) => sum + p.uValue * p.area, 0);
        const cold = glass.reduce((sum, p) => sum + p.uValue * p.area * p.lost, 0);
        return { toAir: through * (out.temperature - t[i]!) - cold + onto, radiant: t[i]! };
      }
      let g = 0;
      let push = onto;
      for (const { radiant, node } of faces) {
        g += radiant;
        push += radiant * y[node]!;
      }
      for (const pane of glass) {
        const outside = out.temperature - pane.lost;
        g += pane.radiant * (1 - pane.radiant / pane.all);
        push += (pane.radiant * (pane.air * t[i]! + pane.out * outside)) / pane.all;
      }
      const radiant = push / g;
      let given = 0;
      for (const { air, node } of faces) given += air * (y[node]! - t[i]!);
      for (const pane of glass) {
        const outside = out.temperature - pane.lost;
        const warmth = pane.air * t[i]! + pane.radiant * radiant + pane.out * outside;
        given += pane.air * (warmth / pane.all - t[i]!);
      }
      return { toAir: given, radiant };
    };
    const heat = t.map((ti, i) => {
      if (valves[i] === 'shut') return 0;
      if (valves[i] === 'open') return most(i, ti);
      if (valves[i] === 'cooling most') return -coils(y, i).most;
      // What the air lacks without any heat, over what a watt more brings it.
      const share = shareOf(y, i, valves[i]!);
      const none = toAir[i]! + fromSurfaces(i, radiant[i]!).toAir;
      const one =
        toAir[i]! + fromSurfaces(i, radiant[i]! + 1000 * share).toAir + 1000 * (1 - share);
      return (-1000 * none) / (one - none);
    });
    const seen = t.map((_, i) => {
      const share = shareOf(y, i, valves[i]!);
      const surfaces = fromSurfaces(i, radiant[i]! + share * heat[i]!);
      toAir[i]! += surfaces.toAir + (1 - share) * heat[i]!;
      if (heat[i]! < 0) water[i]! -= coils(y, i).water * -heat[i]!;
      return surfaces.radiant;
    });
    const onFace = (i: number, node: number): number => {
      let flow = 0;
      for (const { air, radiant: g, ofSun } of facesAt[i]!.get(node) ?? []) {
        flow += air * (t[i]! - y[node]!) + g * (seen[i]! - y[node]!) + ofSun * sunny[i]!;
      }
      return flow;
    };
    chains.forEach((chain, k) => {
      const first = places.chain(k);
      const { area, resistance, capacity, far, room } = chain;
      const farSide =
        far.to === 'neighbour'
          ? far.temperature
          : far.to === 'ground'
            ? out.ground
            : far.to === 'outdoors'
              ? solAirTemperature(
                  out.temperature,
                  now.onElements[k]!,
                  far.absorptance,
                  0.04,
                  skyLossOf(far.tilt),
                )
              : 0;
      capacity.forEach((cap, node) => {
        const here = y[first + node]!;
        let flow = onFace(room, first + node);
        if (far.to === 'room') flow += onFace(far.room, first + node);
        if (node > 0) flow += (area * (y[first + node - 1]! - here)) / resistance[node]!;
        if (node < capacity.length - 1) {
          flow += (area * (y[first + node + 1]! - here)) / resistance[node + 1]!;
        } else if (far.to !== 'room') {
          flow += (area * (farSide - here)) / resistance[node + 1]!;
        }
        dy[first + node] = flow / area / cap;
      });
    });
    home.rooms.forEach((room, i) => {
      const capacity = room.furnishingFactor * density * room.volume * heatOfAir;
      const held = valves[i] === 'holding' || valves[i] === 'cooling';
      dy[places.air(i)] = held ? 0 : toAir[i]! / capacity;
      dy[places.humidity(i)] = water[i]! / (density * room.volume);
      dy[places.heat(i)] = Math.max(0, heat[i]!);
      dy[places.cooling(i)] = Math.max(0, -heat[i]!);
      dy[places.airTime(i)] = t[i]!;
      dy[places.humidityTime(i)] = w[i]!;
      home.species.forEach((_, q) => {
        dy[places.species(q, i)] = gained[q]![i]! / room.volume;
        dy[places.speciesTime(q, i)] = c(q, i);
      });
    });
    return { dy, heat };
  }

  /** Of what a room is given or loses, the share that goes to its surfaces or comes from them. */
  function shareOf(y: readonly number[], i: number, valve: Valve): number {
    const cools = valve === 'cooling' || valve === 'cooling most';
    return cools ? coils(y, i).radiantShare : radiantShare[i]!;
  }

  return {
    ...{ places, rates, most, chains },
    mostCooling: (y: readonly number[], i: number): number => coils(y, i).most,
    heated: emitters.map((list) => list.length > 0),
    cooled: coolers.map((list) => list.length > 0),
  };
}

/** The faces of walls that a room sees, with their conductances to air and radiant node. [W/K] */
function facesByRoom(
  rooms: number,
  chains: readonly {
    readonly room: number;
    readonly area: number;
    readonly kind: string;
    readonly far: Home['elements'][number]['far'];
    readonly resistance: readonly number[];
    readonly capacity: readonly number[];
  }[],
  firstNode: (chain: number) => number,
) {
  const faces = Array.from({ length: rooms }, (): Face[] => []);
  chains.forEach(({ room, area, kind, far, resistance, capacity }, k) => {
    const face = (node: number, film: number, isFloor: boolean): Face => ({
      ...{ area, node, isFloor },
      // A poor film is all radiation.
      radiant: area * Math.min(LONG_WAVE, 1 / film),
      air: area * Math.max(0, 1 / film - LONG_WAVE),
    });
    const first = firstNode(k);
    faces[room]!.push(face(first, resistance[0]!, kind === 'floor'));
    if (far.to === 'room') {
      faces[far.room]!.push(face(first + capacity.length - 1, resistance.at(-1)!, false));
    }
  });
  return faces;
}

interface Face {
  readonly area: number;
  readonly node: number;
  readonly isFloor: boolean;
  readonly air: number;
  readonly radiant: number;
}

/** To a sky 11 K colder than the air, for the share of it that a face sees. [W/m2] */
const skyLossOf = (tilt: number): number =>
  4.14 * 11 * 0.5 * (1 + Math.cos((tilt * Math.PI) / 180));

/** Between the surfaces of a room. [W/(m2 K)] */
const LONG_WAVE = 5.13;
const PRESSURE = 101_325;

/** What passes each way where `alone` is exchanged by itself and `net` goes through. [m3/s] */
function bothWays(alone: number, net: number): { forth: number; back: number } {
  const size = Math.abs(net);
  const more = Math.max(size, alone + size / 2);
  return net > 0 ? { forth: more, back: more - size } : { forth: more - size, back: more };
}
