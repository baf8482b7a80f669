/**
 * What the devices of a home do when they run: physics only. When they run is for control.
 *
 * Indices of species are those of `Home.species`.
 */
export interface Device {
  readonly name: string;
  /** Where it stands; for ventilation of several rooms, where its unit hangs. */
  readonly room: number;
  readonly does: DeviceAction;
  /** Given off at full output besides, by species; absent: nothing. [species unit m3/s] */
  readonly gives?: readonly number[];
}

export type DeviceAction =
  | Dehumidifier
  | Humidifier
  | ExtractFan
  | BalancedVentilation
  | Purifier
  | PlugInHeater
  | Stove;

/** Condenses or adsorbs water. All its electricity and the latent heat of its litres warm the room. */
export interface Dehumidifier {
  readonly kind: 'dehumidifier';
  readonly type: 'compressor' | 'desiccant';
  /** Water taken at the rating condition. [kg/s] */
  readonly ratedWater: number;
  /** Electric power while drying at the rating condition. [W] */
  readonly ratedPower: number;
  /** Rating condition. [°C], [%] */
  readonly ratedTemperature: number;
  readonly ratedHumidity: number;
  /** Electric power while it waits. [W] */
  readonly standby: number;
  /** Water the tank holds; Infinity where it drains away. [kg] */
  readonly tank: number;
}

interface Humidifier {
  readonly kind: 'humidifier';
  /** [kg/s] */
  readonly water: number;
  /** [W] */
  readonly power: number;
}

/** Blows room air outdoors; what replaces it comes through doorways and leaks. */
interface ExtractFan {
  readonly kind: 'extract fan';
  /** [m3/s] */
  readonly flow: number;
  /** Electric power, which leaves with the air. [W] */
  readonly power: number;
}

/** Supplies and extracts the same amount, with recovery. */
export interface BalancedVentilation {
  readonly kind: 'balanced ventilation';
  /** Supply air by room. [m3/s] */
  readonly supplies: readonly { readonly room: number; readonly flow: number }[];
  readonly extracts: readonly { readonly room: number; readonly flow: number }[];
  /** Share of the temperature difference handed to the supply air. [-] */
  readonly heatRecovery: number;
  /** Share of the difference in humidity ratio handed to the supply air. [-] */
  readonly moistureRecovery: number;
  /** Share of the level outdoors that its filter keeps out of the supply air, by species; absent: none. [-] */
  readonly held?: readonly number[];
  /** Electric power, half of which warms the supply air. [W] */
  readonly power: number;
}

/** Cleans room air and gives it back. */
interface Purifier {
  readonly kind: 'purifier';
  /** Clean-air delivery rate by species, 0 for those it lets pass. [m3/s] */
  readonly cleanAir: readonly number[];
  /** Electric power, which warms the room. [W] */
  readonly power: number;
}

interface PlugInHeater {
  readonly kind: 'heater';
  /** [W] */
  readonly power: number;
  readonly radiantShare: number;
}

/** A stove burning logs: batches of wood, each with its own rise and fall of heat. */
export interface Stove {
  readonly kind: 'stove';
  /** Wood laid on each time. [kg] */
  readonly batch: number;
  /** Time from one refuelling to the next. [s] */
  readonly interval: number;
  /** Energy in the wood as bought. [J/kg] */
  readonly energy: number;
  /** Heat to the room over energy in the wood. [-] */
  readonly efficiency: number;
  readonly radiantShare: number;
  /** First-order lag of the heat behind the fire (cast iron 1200, soapstone 10000). [s] */
  readonly lag: number;
  /** Released into the room at each refuelling, by species. [species unit m3] */
  readonly perRefuelling: readonly number[];
  /** Air drawn from the room while it burns; 0 where its air comes from outdoors. [m3/s] */
  readonly roomAir: number;
}
