import type { Home } from '../../src/home/home.ts';
import { doorwayExchange } from '../../src/physics/airflow/doorway-exchange.ts';
import { leakageFlow } from '../../src/physics/airflow/leakage-flow.ts';
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
import type { Now } from './home-now.ts';
import { homePlaces } from './home-places.ts';
import { solAirTemperature } from './physics/heat/sol-air-temperature.ts';

/** What the emitters of a room do: nothing, what holds the air where it is, all they can. */
export type Valve = 'shut' | 'holding' | 'open';

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
  const mine = home.rooms.map((_, i) => chains.filter((c) => c.room === i && c.far.to !== 'room'));
  const areaOf = (list: readonly { area: number }[]): number =>
    list.reduce((sum, { area }) => sum + area, 0);
  const floors = mine.map((list) => list.filter((c) => c.kind === 'floor'));
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

  /** Rates of change of the whole vector, and the heat that each room's emitters give. [1/s], [W] */
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
    const volume = home.rooms.reduce((sum, r) => sum + r.volume, 0);
    const mean = home.rooms.reduce((sum, r, i) => sum + r.volume * t[i]!, 0) / volume;
    const { how, share } = home.leakage;
    const leak = how.by === 'rate' ? how.flow : leakageFlow(how, mean - out.temperature, out.wind);
    for (let i = 0; i < n; i++) {
      fromOutdoors(i, share[i]! * leak, (q) => home.species[q]!.penetration);
    }
    home.openings.forEach(({ room, area, height }, o) => {
      const open = area * now.openings[o]!;
      const flow = singleSidedAiring(open, height, out.wind, t[room]! - out.temperature);
      fromOutdoors(room, flow, () => 1);
    });
    home.doorways.forEach(({ rooms: [a, b], width, height, mixing, shut }, d) => {
      const part = now.doorways[d]!;
      const byWarmth = doorwayExchange(part * width, height, t[a]! - t[b]!, (t[a]! + t[b]!) / 2);
      const flow = shut + (part > 0 ? Math.max(part * mixing, byWarmth) : 0);
      for (const [i, j] of [
        [a, b],
        [b, a],
      ] as const) {
        toAir[i]! += density * heatOfAir * flow * (t[j]! - t[i]!);
        water[i]! += density * flow * (w[j]! - w[i]!);
        home.species.forEach((_, q) => {
          gained[q]![i]! += flow * (c(q, j) - c(q, i));
        });
      }
    });
    for (const { room, area, uValue } of home.panes) {
      toAir[room]! += uValue * area * (out.temperature - t[room]!);
    }
    const radiant = new Array<number>(n).fill(0);
    const sunny = new Array<number>(n).fill(0);
    home.rooms.forEach((room, i) => {
      const { capacity, conductance } = room.buffer;
      const p = vapourPressureFromHumidityRatio(w[i]!, PRESSURE);
      const uptake =
        (capacity > 0 ? conductance : 0) * (p - saturationPressure(t[i]!) * y[places.buffer(i)]!);
      dy[places.buffer(i)] = capacity > 0 ? uptake / capacity : 0;
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
    chains.forEach((chain, k) => {
      const first = places.chain(k);
      toAir[chain.room]! += (chain.area / chain.resistance[0]!) * (y[first]! - t[chain.room]!);
      if (chain.far.to !== 'room') return;
      const end = first + chain.capacity.length - 1;
      toAir[chain.far.room]! +=
        (chain.area / chain.resistance.at(-1)!) * (y[end]! - t[chain.far.room]!);
    });

    const heat = t.map((ti, i) => {
      if (valves[i] === 'shut') return 0;
      return valves[i] === 'open' ? most(i, ti) : -toAir[i]! / (1 - radiantShare[i]!);
    });
    chains.forEach((chain, k) => {
      const first = places.chain(k);
      const { area, resistance, capacity, far, room } = chain;
      const farSide =
        far.to === 'room'
          ? t[far.room]!
          : far.to === 'neighbour'
            ? far.temperature
            : far.to === 'ground'
              ? out.ground
              : far.to === 'outdoors'
                ? solAirTemperature(
                    out.temperature,
                    now.onElements[k]!,
                    far.absorptance,
                    0.04,
                    0.9 * 63 * Math.max(0, Math.cos((far.tilt * Math.PI) / 180)),
                  )
                : 0;
      capacity.forEach((cap, node) => {
        const here = y[first + node]!;
        const before = node === 0 ? t[room]! : y[first + node - 1]!;
        const after = node === capacity.length - 1 ? farSide : y[first + node + 1]!;
        let flow = (before - here) / resistance[node]! + (after - here) / resistance[node + 1]!;
        if (node === 0 && far.to !== 'room') {
          const part = area / areaOf(mine[room]!);
          const isFloor = floors[room]!.includes(chain);
          const ofSun =
            floors[room]!.length === 0
              ? part
              : part / 2 + (isFloor ? area / areaOf(floors[room]!) / 2 : 0);
          const ofRadiant = radiant[room]! + radiantShare[room]! * heat[room]!;
          flow += (part * ofRadiant + ofSun * sunny[room]!) / area;
        }
        dy[first + node] = flow / cap;
      });
    });
    home.rooms.forEach((room, i) => {
      const capacity = room.furnishingFactor * density * room.volume * heatOfAir;
      dy[places.air(i)] =
        valves[i] === 'holding' ? 0 : (toAir[i]! + (1 - radiantShare[i]!) * heat[i]!) / capacity;
      dy[places.humidity(i)] = water[i]! / (density * room.volume);
      dy[places.heat(i)] = heat[i]!;
      dy[places.airTime(i)] = t[i]!;
      dy[places.humidityTime(i)] = w[i]!;
      home.species.forEach((_, q) => {
        dy[places.species(q, i)] = gained[q]![i]! / room.volume;
        dy[places.speciesTime(q, i)] = c(q, i);
      });
    });
    return { dy, heat };
  }

  return { places, rates, most, chains, heated: emitters.map((list) => list.length > 0) };
}

const PRESSURE = 101_325;
