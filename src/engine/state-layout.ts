/**
 * State layout of the time loop: one array per kind of object, one record per object.
 *
 * A function of the loop then holds one or two arrays instead of twenty, and a room's numbers lie
 * side by side; on the engines this runs on that shortens a step by a third. A field is at
 * `record * stride + field`. Each file takes the strides and fields it needs as constants of its own
 * at its foot, because constants of the same file cost nothing to look up and imported ones do.
 */

/** Fields of a room. */
export const ROOM = fields([
  // What stays the same through a run.
  'volume', // m3
  'airMass', // dry air [kg]
  'massRate', // dry air over the control step [kg/s]
  'airCapacity', // air and what warms with it [J/K]
  'capacityRate', // the same over the control step [W/K]
  'paneUA', // all panes [W/K]
  'chainG', // into all chains [W/K]
  'surfaced', // 1 where it has surfaces of its own to warm, else 0
  'sunToAir', // share of the sun that warms the air at once [-]
  'bufferCapacity', // water taken up from 0 to 100 % relative humidity [kg]
  'bufferRate', // the same over the control step [kg/s]
  'bufferG', // vapour between air and buffer [kg/(s Pa)]
  'leakShare', // of the home's leakage [-]
  'surface', // inner surfaces, elements and panes [m2]
  'heated', // 1 where it has an emitter, else 0
  'radiantShare', // of what its emitters give [-]
  'reach', // what reaches the air at once of a watt emitted [W/W]
  // Heat: state, inputs and results of a step.
  'temperature', // air, at the start [°C]
  'meanTemperature', // air, mean over the step, or the one before until it is solved [°C]
  'guess', // air, expected for the middle of the step [°C]
  'setting', // of the thermostat, -Infinity for off [°C]
  'target', // mean that ends the step at that setting [°C]
  'band', // below the setting by so much its emitters give their most; 0 holds it exactly [K]
  'gain', // heat per kelvin below the setting, where there is a band [W/K]
  'heatOverWeight', // one over the implicit weight [-]
  'emitted', // by emitters [W]
  'low', // least that its emitters can give in this step [W]
  'high', // most [W]
  'phase', // freed by condensing and sorption in the step before [W]
  'sun', // through panes [W]
  'deviceHeat', // of devices, to the air [W]
  'deviceRadiant', // of devices, to the surfaces [W]
  'radiantGain', // of people and appliances [W]
  'sunOnSurfaces', // W
  'warmSurface', // sum of area times mean surface temperature [m2 K]
  // Water.
  'humidity', // at the start [kg/kg]
  'meanHumidity', // mean over the step, or the one before until it is solved [kg/kg]
  'buffer', // relative humidity of what buffers, 0 to 1 [-]
  'pressure', // vapour pressure for one unit of humidity ratio [Pa]
  'saturation', // at the mean air temperature [Pa]
  'uptake', // vapour into the buffer per pascal, buffer eliminated [kg/(s Pa)]
  'waterOverWeight', // -
  'condensing', // on panes, net [kg/s]
  'wetG', // vapour to panes that were wet a step before [kg/(s Pa)]
  'deviceWater', // kg/s
  // Air, as mass of dry air, on its way in.
  'leak', // kg/s
  'opening', // kg/s
  'fan', // supplied by fans [kg/s]
  'fanTemperature', // of that air [°C]
  'fanHumidity', // of that air [kg/kg]
  'exchange', // leak and opening [kg/s]
  // Air on its way outdoors.
  'leakOut', // kg/s
  'openingOut', // kg/s
  'extract', // blown out by fans [kg/s]
  'draught', // drawn up flues [kg/s]
  'windowOpen', // share of the step in which a window stands open [-]
  'airNet', // what came in less what went out since the start [kg]
  'airThrough', // what came in since the start [kg]
]);

/** Fields of one species in one room. */
export const TRACER = fields([
  'level', // at the start [species unit]
  'mean', // over the step [species unit]
  'devices', // added by devices [species unit m3/s]
  'filter', // cleaned by devices [m3/s of room air]
  'deposition', // loss by falling out [m3/s of room air]
  'overWeight', // one over the implicit weight of the step [-]
]);

/** Fields of a chain of nodes; see chains.ts. */
export const CHAIN = fields([
  'nearG', // near room to first node [W/K]
  'farG', // last node to far side [W/K]
  'farShare', // far conductance over the last pivot [-]
  'radiantShare', // of the near room's radiant gains that land on the first node [-]
  'sunShare', // of its sun on surfaces [-]
  'area', // facing the near room [m2]
  'nearToNear', // answer of the first node to one kelvin at the near end [K/K]
  'nearToFar', // of the last node [K/K]
  'farToNear', // of the first node to one kelvin at the far end [K/K]
  'farToFar', // of the last node [K/K]
]);

/** Whole-number fields of a chain; places are where a record begins in its array. */
export const LINK = fields([
  'first', // place of its first node
  'last', // place of its last node
  'room', // near room
  'roomAt', // place of that room
  'farRoom', // second room, or -1
  'farAt', // place of that room
  'boundary', // number of the boundary temperature at the far end, or -1
  'book', // place, from a month's first record on, of the near room's ledger entry
  'farBook', // and on the far room
]);

/** Fields of a node; see chains.ts. All but the last three are over the node's pivot where it says so. */
export const NODE = fields([
  'own', // its storage, over the pivot [-]
  'inward', // its link outwards, by which the sweep comes in, over the pivot [-]
  'outward', // its link inwards, by which the rooms' answer goes out, over the pivot [-]
  'overPivot', // K/W
  'overWeight', // one over the implicit weight [-]
  'temperature', // at the start [°C]
  'swept', // scratch
  'capacity', // J/K
]);

/** Fields of a pane. */
export const PANE = fields([
  'ua', // W/K
  'area', // m2
  'drop', // room to inner surface, over room to outdoors [-]
  'vapourG', // vapour from room air to glass [kg/(s Pa)]
  'film', // water on it [kg]
  'wet', // 1 where it exchanges freely with the air this step, 0 where it can only dry out
  'saturation', // at its inner surface [Pa]
  'condensing', // net [kg/s]
]);

/** Fields of a doorway. */
export const DOOR = fields([
  'width', // m
  'height', // m
  'mixing', // least exchange when open [m3/s]
  'shut', // exchange when shut [m3/s]
  'forth', // from its first room to its second [kg/s]
  'back', // kg/s
]);

/** Whole-number fields of a doorway. */
export const FRAME = fields([
  'a', // first room
  'b', // second room
  'ab', // position in the matrix of row a, column b
  'ba', // position of row b, column a
]);

/** Fields of an emitter. */
export const EMITTER = fields([
  'rated', // W
  'excess', // at which it is rated, 0 where it does not depend on it [K]
  'exponent', // -
  'water', // temperature of what feeds it [°C]
  'lag', // s
  'most', // that its valve can let through in this step [W]
  'known', // full output worked out last [W]
  'knownExcess', // and the excess it was worked out at [K]
  'valve', // behind the valve, mean over the step [W]
  'output', // at the start of the step [W]
  'calling', // how long its valve has been open without a break [s]
]);

type Fields<T extends string> = { readonly [K in T | 'stride']: number };

/** Number the fields of a record, and count them. */
function fields<const T extends string>(names: readonly T[]): Fields<T> {
  const numbered = names.map((name, k) => [name, k] as const);
  return Object.fromEntries([...numbered, ['stride', names.length]]) as Fields<T>;
}
