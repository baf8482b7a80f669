import type { Commands, Observation } from '../../control/observations.ts';
import type { BalancedVentilation, Dehumidifier, Device, Stove } from '../../home/devices.ts';
import {
  dehumidifierDrying,
  dehumidifierPower,
  waterPerDrying,
} from '../../physics/equipment/dehumidifier-output.ts';
import type { Series } from '../imposed/imposed.ts';
import type { Model } from '../layout/model.ts';
import { OUTSIDE, ROOM, TRACER } from '../layout/state-layout.ts';
import { burnOver, coldFire } from './fire.ts';

/**
 * One device in the time loop: turns the share of the step it runs into heat, water, air and species
 * of the rooms, and says what it drew.
 */
export interface Running {
  readonly device: Device;
  /** What it does over the coming step, as means. */
  readonly did: DeviceStep;
  /** @param share  of full output over the step [-] */
  readonly run: (share: number, observed: Observation) => void;
  /** Share of full output [-] at which it draws some electric power [W] in the air of the moment. */
  readonly shareAt: (power: number, observed: Observation) => number;
}

/** Means over a step; reused. */
interface DeviceStep {
  /** Electric power drawn. [W] */
  electricity: number;
  /** Fuel power of the wood burned. [W] */
  fuel: number;
  /** Vapour added to the room's air, negative where taken out. [kg/s] */
  water: number;
  /** Heat given to rooms. [W] */
  heat: number;
  /** Share of the step in which it ran. [-] */
  share: number;
}

/** Saturation pressure by temperature, [°C] -> [Pa]. */
type Saturation = (temperature: number) => number;

/** Make the devices of a home ready to run. */
export function startDevices(m: Model, observed: Observation, saturation: Saturation): Running[] {
  return m.home.devices.map((device, d) => startDevice(m, device, d, observed, saturation));
}

/** Clear what devices did to the rooms in the step before. */
export function restDevices({ rooms, roomCount, tracers }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + DEVICE_HEAT] = 0;
    rooms[r + DEVICE_RADIANT] = 0;
    rooms[r + DEVICE_WATER] = 0;
    rooms[r + FAN] = 0;
    rooms[r + FAN_T] = 0;
    rooms[r + FAN_W] = 0;
    rooms[r + EXTRACT] = 0;
    rooms[r + DRAUGHT] = 0;
  }
  for (let t = 0; t < tracers.length; t += TRACER_STRIDE) {
    tracers[t + DEVICE] = 0;
    tracers[t + FILTER] = 0;
  }
}

/** Run every device as commanded. */
export function runDevices(
  all: readonly Running[],
  observed: Observation,
  commands: Commands,
): void {
  for (let d = 0; d < all.length; d++) {
    if (commands.empty[d] === 1) {
      observed.tank[d] = 0;
      observed.full[d] = 0;
    }
    all[d]!.run(commands.devices[d]!, observed);
  }
}

/** Let devices whose power is known run as it says, whatever control commands; no tank stops them. */
export function imposeDevices(
  all: readonly Running[],
  powers: readonly (Series | null)[],
  step: number,
  observed: Observation,
  commands: Commands,
): void {
  for (let d = 0; d < powers.length; d++) {
    const known = powers[d]!;
    if (known === null) continue;
    commands.devices[d] = all[d]!.shareAt(known[step]!, observed);
    commands.empty[d] = 1;
  }
}

function startDevice(
  m: Model,
  device: Device,
  d: number,
  observed: Observation,
  saturation: Saturation,
): Running {
  const did: DeviceStep = { electricity: 0, fuel: 0, water: 0, heat: 0, share: 0 };
  const run = howToRun(m, device, d, did, observed, saturation);
  return { device, did, run: givingOff(m, device, did, run), shareAt: shareAt(device) };
}

/** A heater gives what it draws, more than its rating too; nothing else does more than all it can. */
function shareAt({ room, does }: Device): Running['shareAt'] {
  if (does.kind === 'stove') return () => 0;
  if (does.kind === 'heater') return (power) => (does.power > 0 ? power / does.power : 0);
  if (does.kind !== 'dehumidifier') {
    return (power) => (does.power > 0 ? Math.min(1, power / does.power) : 0);
  }
  const { type, ratedPower, ratedTemperature, ratedHumidity, standby } = does;
  return (power, { temperature, relativeHumidity }) => {
    const [t, rh] = [temperature[room]!, relativeHumidity[room]!];
    const running = dehumidifierPower(type, ratedPower, ratedTemperature, ratedHumidity, t, rh);
    return running > standby
      ? Math.min(1, Math.max(0, (power - standby) / (running - standby)))
      : 0;
  };
}

/** What the device gives off while it runs, besides what it does. */
function givingOff(
  { tracers, species }: Model,
  { room, gives = [] }: Device,
  did: DeviceStep,
  run: Running['run'],
): Running['run'] {
  if (gives.length === 0) return run;
  return (share, observed) => {
    run(share, observed);
    for (let s = 0; s < gives.length; s++) {
      const t = (room * species.count + s) * TRACER_STRIDE;
      tracers[t + DEVICE] = tracers[t + DEVICE]! + did.share * gives[s]!;
    }
  };
}

function howToRun(
  m: Model,
  device: Device,
  d: number,
  did: DeviceStep,
  observed: Observation,
  saturation: Saturation,
): Running['run'] {
  const { does } = device;
  const r = device.room * ROOM_STRIDE;
  const { rooms, tracers, species } = m;
  const tracer = (s: number): number => (device.room * species.count + s) * TRACER_STRIDE;
  switch (does.kind) {
    case 'dehumidifier':
      return dry(m, does, device.room, d, did, saturation);
    case 'humidifier':
      return (share) => {
        did.share = share;
        did.electricity = share * does.power;
        did.water = share * does.water;
        did.heat = did.electricity - m.evaporation * did.water;
        rooms[r + DEVICE_WATER] = rooms[r + DEVICE_WATER]! + did.water;
        rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + did.heat;
      };
    case 'extract fan':
      return (share) => {
        did.share = share;
        did.electricity = share * does.power;
        rooms[r + EXTRACT] = rooms[r + EXTRACT]! + m.density * share * does.flow;
      };
    case 'balanced ventilation':
      return ventilate(m, does, did, observed);
    case 'purifier':
      return (share) => {
        did.share = share;
        did.electricity = share * does.power;
        did.heat = did.electricity;
        rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + did.heat;
        for (let s = 0; s < does.cleanAir.length; s++) {
          const t = tracer(s);
          tracers[t + FILTER] = tracers[t + FILTER]! + share * does.cleanAir[s]!;
        }
      };
    case 'heater':
      return (share) => {
        did.share = share;
        did.electricity = share * does.power;
        did.heat = did.electricity;
        const radiant = does.radiantShare * did.heat;
        rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + did.heat - radiant;
        rooms[r + DEVICE_RADIANT] = rooms[r + DEVICE_RADIANT]! + radiant;
      };
    case 'stove':
      return burn(m, does, device.room, did, tracer);
  }
}

/** Takes water while its tank has room; its electricity and the latent heat of the water warm the room. */
function dry(
  m: Model,
  does: Dehumidifier,
  room: number,
  d: number,
  did: DeviceStep,
  saturation: Saturation,
): Running['run'] {
  const { rooms, dt } = m;
  const r = room * ROOM_STRIDE;
  const { type, ratedWater, ratedPower, ratedTemperature, ratedHumidity, standby, tank } = does;
  const perDrying = waterPerDrying(type, ratedWater, ratedTemperature, ratedHumidity);
  return (share, observed) => {
    if (share <= 0) {
      did.share = 0;
      did.electricity = standby;
      did.water = 0;
      did.heat = standby;
      rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + standby;
      return;
    }
    const t = observed.temperature[room]!;
    const rh = observed.relativeHumidity[room]!;
    const rate = perDrying * dehumidifierDrying(type, t, rh, saturation);
    const power = dehumidifierPower(type, ratedPower, ratedTemperature, ratedHumidity, t, rh);
    // The tank stops it within the step in which it fills.
    const space = (tank - observed.tank[d]!) / dt;
    const running = rate > 0 ? Math.min(share, space / rate) : share;
    did.share = running;
    did.electricity = running * power + (1 - running) * standby;
    did.water = -running * rate;
    did.heat = did.electricity - m.evaporation * did.water;
    rooms[r + DEVICE_WATER] = rooms[r + DEVICE_WATER]! + did.water;
    rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + did.heat;
    if (tank === Number.POSITIVE_INFINITY) return;
    observed.tank[d] = Math.min(tank, observed.tank[d]! - did.water * dt);
    observed.full[d] = observed.tank[d]! >= tank * (1 - ROUNDING) ? 1 : 0;
  };
}

/**
 * Supplies and extracts; the supply takes a share of the extract's warmth and moisture, and of the fan's
 * power. What its filter holds of the air outdoors is taken off what the supply brings in.
 */
function ventilate(
  m: Model,
  does: BalancedVentilation,
  did: DeviceStep,
  observed: Observation,
): Running['run'] {
  const { rooms, density, airCp, tracers, species } = m;
  const { held = [] } = does;
  const total = (list: BalancedVentilation['supplies']): number =>
    list.reduce((sum, { flow }) => sum + flow, 0);
  const supplied = total(does.supplies);
  const extracted = total(does.extracts);
  return (share) => {
    did.share = share;
    did.electricity = share * does.power;
    if (share <= 0 || supplied <= 0) return;
    let warm = 0;
    let moist = 0;
    for (let k = 0; k < does.extracts.length; k++) {
      const { room, flow } = does.extracts[k]!;
      const r = room * ROOM_STRIDE;
      warm += flow * rooms[r + TEMPERATURE]!;
      moist += flow * rooms[r + HUMIDITY]!;
      rooms[r + EXTRACT] = rooms[r + EXTRACT]! + density * share * flow;
    }
    const outdoor = observed.outdoor[0]!;
    const outdoorHumidity = m.outside[OUTDOOR_W]!;
    const fan = (0.5 * did.electricity) / (density * airCp * share * supplied);
    const t = outdoor + does.heatRecovery * (warm / extracted - outdoor) + fan;
    const w = outdoorHumidity + does.moistureRecovery * (moist / extracted - outdoorHumidity);
    for (let k = 0; k < does.supplies.length; k++) {
      const { room, flow } = does.supplies[k]!;
      blowIn(rooms, room * ROOM_STRIDE, density * share * flow, t, w);
      for (let s = 0; s < held.length; s++) {
        const k = (room * species.count + s) * TRACER_STRIDE;
        tracers[k + DEVICE] = tracers[k + DEVICE]! - share * flow * held[s]! * species.outdoor[s]!;
      }
    }
  };
}

/** Add supply air to what a room already gets, mixed by mass. */
function blowIn(rooms: Float64Array, r: number, flow: number, t: number, w: number): void {
  const before = rooms[r + FAN]!;
  const after = before + flow;
  rooms[r + FAN_T] = (before * rooms[r + FAN_T]! + flow * t) / after;
  rooms[r + FAN_W] = (before * rooms[r + FAN_W]! + flow * w) / after;
  rooms[r + FAN] = after;
}

/** Burns batch after batch while it is ordered to; heat lags behind the fire, smoke comes with the logs. */
function burn(
  m: Model,
  does: Stove,
  room: number,
  did: DeviceStep,
  tracer: (species: number) => number,
): Running['run'] {
  const { rooms, tracers, dt, density } = m;
  const { lag, radiantShare } = does;
  const r = room * ROOM_STRIDE;
  const kept = lag > 0 ? Math.exp(-dt / lag) : 0;
  const fire = coldFire();
  let held = 0; // heat the fire gave that the stove has not passed on [W], first order
  return (share) => {
    burnOver(fire, does, share, dt);
    const { heat, refuellings } = fire;
    const mean = lag > 0 ? heat + ((held - heat) * (1 - kept) * lag) / dt : heat;
    held = heat + (held - heat) * kept;
    if (held < FORGOTTEN) held = 0;
    did.share = fire.burning;
    did.fuel = fire.fuel;
    did.heat = mean;
    rooms[r + DEVICE_HEAT] = rooms[r + DEVICE_HEAT]! + (1 - radiantShare) * mean;
    rooms[r + DEVICE_RADIANT] = rooms[r + DEVICE_RADIANT]! + radiantShare * mean;
    rooms[r + DRAUGHT] = rooms[r + DRAUGHT]! + density * fire.burning * does.roomAir;
    if (refuellings === 0) return;
    for (let s = 0; s < does.perRefuelling.length; s++) {
      const t = tracer(s);
      tracers[t + DEVICE] = tracers[t + DEVICE]! + (refuellings * does.perRefuelling[s]!) / dt;
    }
  };
}

const { temperature: TEMPERATURE, humidity: HUMIDITY, deviceHeat: DEVICE_HEAT } = ROOM;
const { deviceRadiant: DEVICE_RADIANT, deviceWater: DEVICE_WATER, extract: EXTRACT } = ROOM;
const { draught: DRAUGHT, fan: FAN, fanTemperature: FAN_T, fanHumidity: FAN_W } = ROOM;
const { devices: DEVICE, filter: FILTER } = TRACER;
const { humidity: OUTDOOR_W } = OUTSIDE;
const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const ROUNDING = 1e-9;
/** Heat output below which a stove counts as cold. [W] */
const FORGOTTEN = 1e-3;
