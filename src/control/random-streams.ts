/** Random streams by purpose: offsets far apart, to which the index of the object is added. */
export const STREAM = {
  people: 0x10_0000,
  presence: 0x50_0000,
  airings: 1_000_000_000,
  windowRequests: 1_100_000_000,
  sensors: 1_200_000_000,
} as const;
