import type { Crack, Leakage } from '../../src/home/home.ts';

/**
 * Leakage of rooms that each have cracks low and high, under suction or pressure whatever way wind
 * blows, so that tests need no direction.
 *
 * @param share     of each room
 * @param flowAt1   of all together at 1 Pa [m3/s]
 */
export function leaky(share: readonly number[], flowAt1: number, height = 2.5): Leakage['how'] {
  const cracks = share.flatMap((part, room): Crack[] =>
    [0.25, 0.75].flatMap((level) =>
      [0.3, -0.3].map((pressureCoefficient) => ({
        ...{ room, height: level * height, azimuth: null, pressureCoefficient },
        ...{ flowAt1: (part * flowAt1) / 4, flowAt10: (part * flowAt1 * 10 ** 0.65) / 4 },
      })),
    ),
  );
  return { by: 'pressure', cracks: cracks.filter(({ flowAt1: flow }) => flow > 0) };
}
