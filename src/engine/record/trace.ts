import type { RoomColumns } from './room-columns.ts';

/**
 * View of a run that observers get, one span of control steps (a day) at a time.
 *
 * Arrays are laid out step by step, rooms side by side: value of room i in step s of the span is
 * at `[s * rooms + i]`. Values are means over the step. The arrays are reused for the next span:
 * copy what you keep.
 */
export interface TraceView {
  /** Number of the first step since the period's start. */
  readonly firstStep: number;
  /** Number of control steps in this span. */
  readonly steps: number;
  readonly rooms: number;
  /** Control step. [s] */
  readonly dt: number;
  /** Instant at which the first step begins. [s UTC] */
  readonly start: number;

  /** Series by step and room. */
  readonly room: Omit<RoomColumns, 'levels' | 'length'> & {
    /** Heat that the air took to stay at an imposed temperature, negative where taken from it; else 0. [W] */
    readonly heldHeat: Float64Array;
    /** Vapour that it took to stay at an imposed humidity; else 0. [kg/s] */
    readonly heldVapour: Float64Array;
    /** Concentrations, one array per species in the order of `Home.species`. */
    readonly species: readonly Float64Array[];
  };

  /** Series of the whole home, by step. */
  readonly home: {
    /** [°C] */
    readonly outdoorTemperature: Float64Array;
    /** [Pa] */
    readonly outdoorVapourPressure: Float64Array;
    /** Levels outdoors, one array per species in the order of `Home.species`. [species unit] */
    readonly outdoorSpecies: readonly Float64Array[];
    /** Leakage. [m3/s] */
    readonly infiltration: Float64Array;
    /** Fuel drawn for heat, one array per heat source in the order of `Home.sources`. [W] */
    readonly sourceFuel: readonly Float64Array[];
    /** Electricity of the sources' backup heaters, in the same order. [W] */
    readonly sourceBackup: readonly Float64Array[];
    /** Electricity of the household's activities. [W] */
    readonly electricity: Float64Array;
    /** Gas burnt by the household's activities. [W] */
    readonly gas: Float64Array;
    /** Closed share of each blind, in the order of `Home.blinds`. [-] */
    readonly blinds: readonly Float64Array[];
    /** What each cooler did, in the order of `Home.cooling`. */
    readonly coolers: readonly CoolerTrace[];
    /** What each device did, in the order of `Home.devices`. */
    readonly devices: readonly DeviceTrace[];
  };
}

/** What one cooler did, per step. */
interface CoolerTrace {
  /** Heat removed from its room, sensible and latent. [W] */
  readonly removed: Float64Array;
  /** Water drained. [kg/s] */
  readonly water: Float64Array;
  /** Electric power drawn. [W] */
  readonly electricity: Float64Array;
}

/** What one device did, per step. */
export interface DeviceTrace {
  /** Electric power drawn. [W] */
  readonly electricity: Float64Array;
  /** Fuel power of the wood burned. [W] */
  readonly fuel: Float64Array;
  /** Vapour added to the room's air, negative where taken out. [kg/s] */
  readonly water: Float64Array;
  /** Heat given to the room. [W] */
  readonly heat: Float64Array;
  /** Share of the step in which it ran. [-] */
  readonly share: Float64Array;
}

/** Callback that observes a run: called once per span of steps, in order of time. */
export type Observer = (trace: TraceView) => void;
