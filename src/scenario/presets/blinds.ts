import { type Preset, preset } from '../../units/preset.ts';
import type { BLIND_KINDS } from '../choices.ts';

export type BlindKind = (typeof BLIND_KINDS)[number];

const SUN = 'DIN 4108-2:2013, reduction factors of sun protection, from memory';
const SHUTTER = 'ISO 10077-1:2017, added resistance of shutters of average tightness, from memory';
const STILL_AIR = 'common practice: a layer of air that is not tight';

/**
 * Blinds by what they are: whether they hang inside; share of the g-value that is left when they are
 * closed [-]; resistance that they then add to the pane [m2 K/W].
 */
export const BLINDS: Readonly<
  Record<
    BlindKind,
    { readonly inside: boolean; readonly gShare: Preset; readonly resistance: Preset }
  >
> = {
  'roller shutter': {
    ...{ inside: false, gShare: preset(0.1, 0.05, 0.2, SUN) },
    resistance: preset(0.17, 0.08, 0.3, SHUTTER),
  },
  'outside slats': {
    ...{ inside: false, gShare: preset(0.25, 0.1, 0.35, SUN) },
    resistance: preset(0.04, 0, 0.1, STILL_AIR),
  },
  'outside screen': {
    ...{ inside: false, gShare: preset(0.3, 0.15, 0.4, SUN) },
    resistance: preset(0.04, 0, 0.1, STILL_AIR),
  },
  'inside blind': {
    ...{ inside: true, gShare: preset(0.75, 0.5, 0.9, SUN) },
    resistance: preset(0.06, 0.02, 0.12, STILL_AIR),
  },
  curtain: {
    ...{ inside: true, gShare: preset(0.8, 0.5, 0.9, SUN) },
    resistance: preset(0.1, 0.03, 0.2, STILL_AIR),
  },
};

/** Share of its U-value [W/(m2 K)] that a pane keeps behind an added resistance [m2 K/W]. */
export function uShareOf({ value, low, high, source }: Preset, uValue: number): Preset {
  const left = (resistance: number): number =>
    Number((1 / (1 + uValue * resistance)).toPrecision(3));
  return { value: left(value), low: left(high), high: left(low), source };
}
