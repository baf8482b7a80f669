import { chainFromUValue } from '../../src/home/chain.ts';
import type { Element, FarSide, Home, Pane, Room } from '../../src/home/home.ts';

/** A home of given parts, everything else empty or plain. */
export function aHome(parts: Partial<Home>): Home {
  return {
    site: { latitude: 52, longitude: 0, elevation: 20, albedo: 0.2 },
    rooms: [aRoom('all')],
    elements: [],
    panes: [],
    openings: [],
    doorways: [],
    leakage: { how: { by: 'rate', flow: 0 }, share: [1], ach50: null },
    emitters: [],
    sources: [],
    species: [],
    devices: [],
    ...parts,
  };
}

export function aRoom(name: string, floorArea = 20): Room {
  return {
    name,
    floorArea,
    volume: floorArea * 2.4,
    furnishingFactor: 5,
    mass: { capacity: 1e6, area: 40 },
    buffer: { capacity: 1, conductance: 1e-7, deep: { capacity: 4, conductance: 2e-8 } },
    tiledArea: 0,
    coldSpotFactor: 0.75,
    deposition: [],
    sunToAir: 0.1,
  };
}

/** An element of a U-value and middling mass. */
export function anElement(
  name: string,
  area: number,
  uValue: number,
  far: FarSide = OUTDOORS,
  room = 0,
): Element {
  const chain = chainFromUValue(uValue, 100_000, { inner: 0.13, outer: 0.04 }, 'inside');
  return { name, room, kind: 'wall', area, chain, far };
}

export function aPane(name: string, area: number, uValue: number, room = 0): Pane {
  const glass = { gValue: 0.7, frameShare: 0.3, unshaded: 0.8 };
  return { name, room, area, uValue, ...glass, azimuth: 180, tilt: 90 };
}

const OUTDOORS: FarSide = { to: 'outdoors', azimuth: 180, tilt: 90, absorptance: 0.6 };
