/** A way of air before it is laid out. */
export interface PathPlan {
  readonly to: number;
  /** Room it comes from, or -1 for outdoors. */
  readonly from: number;
  /** Pressure for a flow by volume, above 0 [Pa s/m3], and for its square, over the density [1/m4]. */
  readonly friction: number;
  readonly inertia: number;
  /** Above the home's height 0. [m] */
  readonly height: number;
  /** Number of the side that its wind comes from; -1 where wind and warmth do not drive it. */
  readonly side: number;
  /** False for what can be shut tight, such as windows: then no room's balance may rest on it. */
  readonly always: boolean;
}
