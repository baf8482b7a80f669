/** How readily mould grows on a material and dies back, in the terms of the VTT model. */
export interface MouldKind {
  /** Speed of growth before index 1, relative to pine sapwood. [-] */
  readonly early: number;
  /** Speed after index 1; null for pine, where it follows from the time to visible growth. [-] */
  readonly late: number | null;
  /** Highest index at a humidity: a + b r - c r2, r running from critical humidity to 100 %. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** Critical humidity of warm surfaces. [%] */
  readonly lowest: number;
  /** Speed of decline relative to pine. [-] */
  readonly decline: number;
  /** 0 pine, 1 spruce. */
  readonly species: 0 | 1;
  /** 0 sawn, 1 dried in a kiln. */
  readonly surface: 0 | 1;
}

export type MouldSensitivity = 'very sensitive' | 'sensitive' | 'medium resistant' | 'resistant';

/**
 * The original equations, for pine sapwood.
 * Source: Hukka and Viitanen 1999.
 */
export const PINE: MouldKind = {
  early: 1,
  late: null,
  a: 1,
  b: 7,
  c: 2,
  lowest: 80,
  decline: 1,
  species: 0,
  surface: 0,
};

/**
 * Classes of building materials: untreated wood; planed or glued wood, paper on boards; cement and
 * plastic, mineral wool; glass, metal, treated surfaces. Plaster and paint stand between sensitive
 * and medium. Decline is left at pine's speed, which is quick: materials that keep mould longer need
 * a smaller factor.
 * Source: Ojanen et al. 2010, Buildings XI conference (from memory).
 */
export const MOULD_CLASSES: Readonly<Record<MouldSensitivity, MouldKind>> = {
  'very sensitive': { ...PINE, early: 1, late: 2 },
  sensitive: { ...PINE, early: 0.578, late: 0.386, a: 0.3, b: 6, c: 1 },
  'medium resistant': { ...PINE, early: 0.072, late: 0.097, a: 0, b: 5, c: 1.5, lowest: 85 },
  resistant: { ...PINE, early: 0.033, late: 0.014, a: 0, b: 3, c: 1, lowest: 85 },
};
