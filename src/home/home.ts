import type { Device } from './devices.ts';

/**
 * One home as data in SI units: what the engine steps and the measures read.
 *
 * Rooms are referred to by their index in `rooms`. Nothing here knows time, files or the words of
 * a scenario; whatever a householder did not know has been filled in before a Home is made.
 */
export interface Home {
  readonly site: Site;
  readonly rooms: readonly Room[];
  readonly elements: readonly Element[];
  readonly panes: readonly Pane[];
  /** What can be closed over panes, at most one over each; absent is nothing. */
  readonly blinds?: readonly Blind[];
  readonly openings: readonly Opening[];
  readonly doorways: readonly Doorway[];
  readonly leakage: Leakage;
  readonly emitters: readonly Emitter[];
  readonly sources: readonly HeatSource[];
  readonly species: readonly Species[];
  readonly devices: readonly Device[];
  /** What cools; absent is nothing. */
  readonly cooling?: readonly Cooler[];
  /** Wind that meets the home's walls over the wind of the weather; absent is 1. [-] */
  readonly windRatio?: number;
  /** Long-wave coefficient of inner surfaces where it is not the usual one; 0 is none. [W/(m2 K)] */
  readonly longWave?: number;
}

export interface Site {
  /** Latitude, north positive. [deg] */
  readonly latitude: number;
  /** Longitude, east positive. [deg] */
  readonly longitude: number;
  /** Elevation above sea level. [m] */
  readonly elevation: number;
  /** Reflectance of the ground around the home. [-] */
  readonly albedo: number;
  /** How diffuse light is spread over the sky; uneven, after Perez 1990, unless told. */
  readonly sky?: 'uneven' | 'even';
}

export interface Room {
  readonly name: string;
  /** [m2] */
  readonly floorArea: number;
  /** Air volume. [m3] */
  readonly volume: number;
  /** Floor above the home's height 0; absent is 0. [m] */
  readonly elevation?: number;
  /** 0 is the ground floor; absent is 0. */
  readonly storey?: number;
  /** Heat capacity of air and what warms with it, as a multiple of the air's own. [-] */
  readonly furnishingFactor: number;
  /** Internal mass (furniture, light partitions): heat capacity [J/K] and area that exchanges [m2]. */
  readonly mass: { readonly capacity: number; readonly area: number };
  /** Moisture held by furnishings and surfaces, exchanged with the air over a day. */
  readonly buffer: {
    /** Water taken up from 0 to 100 % relative humidity. [kg] */
    readonly capacity: number;
    /** Exchange with the air. [kg/(s Pa)] */
    readonly conductance: number;
    /** What lies behind it and answers over weeks: capacity as above, exchange with the surface store. */
    readonly deep: { readonly capacity: number; readonly conductance: number };
  };
  /** Tiles, on which water can stand, at the temperature of the inner surfaces. [m2] */
  readonly tiledArea: number;
  /** Surface temperature factor of the coldest spot: (surface - outdoors)/(room - outdoors). [-] */
  readonly coldSpotFactor: number;
  /** Loss of each species by deposition, in the order of `Home.species`. [1/s] */
  readonly deposition: readonly number[];
  /** Given off by materials all the time, by species in the same order; absent: nothing. [species unit m3/s] */
  readonly emission?: readonly number[];
  /** Share of the solar gain through panes that warms the air at once; surfaces take the rest. [-] */
  readonly sunToAir: number;
}

/** A wall, floor or roof: a chain of resistances and capacities from a room to a far side. */
export interface Element {
  readonly name: string;
  readonly room: number;
  readonly kind: 'wall' | 'floor' | 'roof' | 'partition';
  /** [m2] */
  readonly area: number;
  readonly chain: Chain;
  readonly far: FarSide;
}

/**
 * Nodes from the room outwards. `resistance` has one number more than `capacity`: the first is the
 * inner surface resistance, the last the far surface resistance.
 */
export interface Chain {
  /** [m2 K/W] */
  readonly resistance: readonly number[];
  /** [J/(m2 K)] */
  readonly capacity: readonly number[];
}

export type FarSide =
  | {
      readonly to: 'outdoors';
      /** Azimuth of the outer face, clockwise from north. [deg] */
      readonly azimuth: number;
      /** Tilt from the horizontal: 0 faces up, 90 is upright. [deg] */
      readonly tilt: number;
      /** Solar absorptance of the outer face. [-] */
      readonly absorptance: number;
    }
  | {
      readonly to: 'ground' /** How much of the year's swing arrives. [-] */;
      readonly damping: number;
    }
  | { readonly to: 'neighbour' /** [°C] */; readonly temperature: number }
  | { readonly to: 'nothing' }
  | { readonly to: 'room'; readonly room: number };

export interface Pane {
  readonly name: string;
  readonly room: number;
  /** Glass and frame together. [m2] */
  readonly area: number;
  /** Glass and frame together. [W/(m2 K)] */
  readonly uValue: number;
  /** Share of sunshine on the glass that ends as heat indoors, at normal incidence. [-] */
  readonly gValue: number;
  /** Share of the area that is frame. [-] */
  readonly frameShare: number;
  /** Share of sunshine that gets past trees, reveals, neighbours and curtains. [-] */
  readonly unshaded: number;
  readonly azimuth: number;
  readonly tilt: number;
}

/** A shutter, blind or curtain over one pane. */
export interface Blind {
  readonly name: string;
  /** Index in `Home.panes`. */
  readonly pane: number;
  /** Whether it hangs between glass and room, where it keeps warmth off the glass. */
  readonly inside: boolean;
  /** Share of the pane's g-value that is left when it is closed. [-] */
  readonly gShare: number;
  /** Share of the pane's U-value that is left when it is closed. [-] */
  readonly uShare: number;
}

/** What can stand open to the outdoors. */
export interface Opening {
  readonly name: string;
  readonly room: number;
  /** Fully open. [m2] */
  readonly area: number;
  /** Height of the opening itself. [m] */
  readonly height: number;
  /** Its upper edge above the floor; absent is 2.1. [m] */
  readonly head?: number;
  readonly azimuth: number;
}

export interface Doorway {
  readonly name: string;
  readonly rooms: readonly [number, number];
  /** [m] */
  readonly width: number;
  /** [m] */
  readonly height: number;
  /** Least exchange each way when open, for people passing and draughts. [m3/s] */
  readonly mixing: number;
  /** Exchange each way when shut, under and around the leaf. [m3/s] */
  readonly shut: number;
}

/**
 * Air that leaks through the home's shell. Shares say how much of its cracks each room has; they add
 * to 1.
 */
export interface Leakage {
  readonly how:
    | { readonly by: 'rate' /** Whole-home, all hours alike. [m3/s] */; readonly flow: number }
    | {
        readonly by: 'pressure' /** Background vents among them. */;
        readonly cracks: readonly Crack[];
      };
  readonly share: readonly number[];
  /** Air changes at 50 Pa as a blower door finds them, null where not known; for the cross-check. [1/h] */
  readonly ach50: number | null;
}

/** Cracks or vents of one room that wind and warmth meet alike. */
export interface Crack {
  readonly room: number;
  /** Above the home's height 0. [m] */
  readonly height: number;
  /** Where its wall looks; null where `pressureCoefficient` holds for wind from anywhere. [deg] */
  readonly azimuth: number | null;
  /** Wind pressure over rho U2/2; used where there is no azimuth. [-] */
  readonly pressureCoefficient: number;
  /** What passes at 1 and at 10 Pa. [m3/s] */
  readonly flowAt1: number;
  readonly flowAt10: number;
}

export interface Emitter {
  readonly name: string;
  readonly room: number;
  /** Index in `Home.sources`. */
  readonly source: number;
  /** Output at the rated excess temperature. [W] */
  readonly ratedPower: number;
  /** Excess of water over room temperature at which the power is rated; 0 where output does not depend on it. [K] */
  readonly ratedExcess: number;
  /** Exponent of output over excess temperature. [-] */
  readonly exponent: number;
  /** Share of the output that warms surfaces rather than air. [-] */
  readonly radiantShare: number;
  /** First-order lag of the output behind the valve; 0 is none. [s] */
  readonly lag: number;
}

export type Fuel = 'gas' | 'oil' | 'lpg' | 'wood' | 'electricity' | 'district heat';

export interface HeatSource {
  readonly name: string;
  readonly fuel: Fuel;
  /** Mean water temperature in the emitters; NaN where there is no water. [°C] */
  readonly waterTemperature: number;
  /** Water by outdoor temperature instead, for weather-led heating; straight between, level beyond. [°C] */
  readonly waterCurve?: Curve;
  /** All its emitters together can draw this much. [W] */
  readonly power: number;
  /** Greatest output by outdoor temperature, in place of `power`. [W] */
  readonly powerCurve?: Curve;
  /** Electric heater that helps when all of that is not enough. [W] */
  readonly backup?: number;
  /** Who goes short when it is not enough: all alike, or whoever asked last. */
  readonly sharing?: 'in proportion' | 'first come';
  readonly conversion:
    | {
        readonly by: 'efficiency' /** useful over fuel (gross), [-] */;
        readonly efficiency: number;
      }
    | {
        readonly by: 'cop';
        /** Outdoor temperatures, ascending [°C], and the COP at each [-]; straight between, level beyond. */
        readonly outdoor: readonly number[];
        readonly cop: readonly number[];
      };
}

/** Something that takes heat out of one room. */
export interface Cooler {
  readonly name: string;
  readonly room: number;
  readonly source: 'ideal' | 'split' | 'single duct' | 'reversible heat pump';
  /** Most heat it removes, sensible and latent; Infinity for ideal, of which a room has one at most. [W] */
  readonly power: number;
  /** Heat removed per electricity, by outdoor temperature. [-] */
  readonly eer: Curve;
  /** The coil that air is blown over; null removes sensible heat only. */
  readonly coil: {
    /** Share of the air that passes the coil untouched. [-] */
    readonly bypassFactor: number;
    /** Apparatus dew point. [°C] */
    readonly temperature: number;
    /** At full output. [m3/s] */
    readonly airflow: number;
  } | null;
  /** Room air blown outdoors at full output, by units with a single duct. [m3/s] */
  readonly exhaust: number;
  /** Share of what it removes that surfaces radiate to it. [-] */
  readonly radiantShare: number;
}

/** A value by outdoor temperature, ascending [°C]. */
export interface Curve {
  readonly outdoor: readonly number[];
  readonly value: readonly number[];
}

/** Something carried by the air, or falling out of it. */
export interface Species {
  readonly name: string;
  /** Name that tables print; absent: `name`. */
  readonly label?: string;
  /** Unit of the concentration: "ppm" (sources in ppm m3/s), "µg/m3" (sources in µg/s), any of so much a m3. */
  readonly unit: string;
  /** Level outdoors where the weather file has no column of it. [unit] */
  readonly outdoor: number;
  /** Outdoor level by month, twelve from January, in place of `outdoor`, which is then their mean. */
  readonly outdoorByMonth?: readonly number[];
  /** Outdoor levels, evenly spaced, in place of both; before and after them the first and the last hold. */
  readonly outdoorSeries?: OutdoorSeries;
  /** Share that survives the way in through leaks. [-] */
  readonly penetration: number;
  /** Share that survives the way in through open windows, such as past a screen; absent: all of it. [-] */
  readonly windowPenetration?: number;
}

/** Levels outdoors, each the mean of the step that begins at its instant. */
export interface OutdoorSeries {
  /** Instant of the first. [s UTC] */
  readonly start: number;
  /** [s] */
  readonly step: number;
  readonly values: Float64Array;
}
