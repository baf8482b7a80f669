/** Everything that changes in a home, by its place in one vector. */
export interface Places {
  readonly air: (room: number) => number;
  /** First node of a chain; the others follow. Elements first, then the mass of each room. */
  readonly chain: (chain: number) => number;
  readonly humidity: (room: number) => number;
  readonly buffer: (room: number) => number;
  readonly deep: (room: number) => number;
  readonly species: (species: number, room: number) => number;
  /** Heat given by emitters and taken by coolers since the vector was last cleared, and the air over time. */
  readonly heat: (room: number) => number;
  readonly cooling: (room: number) => number;
  readonly airTime: (room: number) => number;
  readonly humidityTime: (room: number) => number;
  readonly speciesTime: (species: number, room: number) => number;
  readonly size: number;
}

/** @param nodes  of each chain */
export function homePlaces(rooms: number, nodes: readonly number[], species: number): Places {
  const before = nodes.map((_, k) => nodes.slice(0, k).reduce((sum, x) => sum + x, 0));
  const inChains = nodes.reduce((sum, x) => sum + x, 0);
  const block = (k: number) => rooms + inChains + k * rooms;
  return {
    air: (i) => i,
    chain: (k) => rooms + before[k]!,
    humidity: (i) => block(0) + i,
    buffer: (i) => block(1) + i,
    deep: (i) => block(2) + i,
    heat: (i) => block(3) + i,
    cooling: (i) => block(4) + i,
    airTime: (i) => block(5) + i,
    humidityTime: (i) => block(6) + i,
    species: (q, i) => block(7 + q) + i,
    speciesTime: (q, i) => block(7 + species + q) + i,
    size: block(7 + 2 * species),
  };
}
