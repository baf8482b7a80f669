/**
 * State layout of the time loop: one array per kind of object, one record per object.
 *
 * A function of the loop then holds one or two arrays instead of twenty, and a room's numbers lie
 * side by side; on the engines this runs on that shortens a step by a third. A field is at
 * `record * stride + field`. Each file takes the strides and fields it needs as constants of its own
 * at its foot, because constants of the same file cost nothing to look up and imported ones do.
 */

/** What the whole home has in one record: outdoors, mean over the step, and what leaks. */
export const OUTSIDE = fields([
  'temperature', // °C
  'humidity', // kg/kg
  'windSpeed', // m/s
  'windFrom', // direction that the wind comes from, NaN where unknown [deg]
  'leakage', // of the whole home [m3/s]
]);

/** Fields of a room. */
export const ROOM = fields([
  // What stays the same through a run.
  'volume', // m3
  'airMass', // dry air [kg]
  'massRate', // dry air over the control step [kg/s]
  'airCapacity', // air and what warms with it [J/K]
  'capacityRate', // the same over the control step [W/K]
  'paneAir', // air to outdoors through panes [W/K]
  'paneRadiant', // radiant node to outdoors through panes [W/K]
  'paneBetween', // air to radiant node by way of panes [W/K]
  'paneAirSky', // from air through panes to a sky colder than the air outdoors [W]
  'paneRadiantSky', // from the radiant node [W]
  'radiantG', // radiant node to all surfaces [W/K]
  'surfaced', // 1 where it has surfaces besides panes, else 0
  'sunToAir', // share of the sun that warms the air at once [-]
  'bufferCapacity', // water taken up from 0 to 100 % relative humidity [kg]
  'bufferRate', // the same over the control step [kg/s]
  'bufferG', // vapour between air and buffer [kg/(s Pa)]
  'deepCapacity', // water that the deep store takes up from 0 to 100 % relative humidity [kg]
  'deepRate', // the same over the control step [kg/s]
  'deepG', // vapour between buffer and deep store [kg/(s Pa)]
  'heated', // 1 where it has an emitter, else 0
  'radiantShare', // of what its emitters give [-]
  'sensorRadiant', // how much its thermostat feels the surfaces [-]
  // Heat: state, inputs and results of a step.
  'temperature', // air, at the start [°C]
  'meanTemperature', // air, mean over the step, or the one before until it is solved [°C]
  'guess', // air, expected for the middle of the step [°C]
  'radiantMean', // of its inner surfaces, mean over the step [°C]
  'feltNow', // by its thermostat at the start [°C]
  'felt', // by the thermostat with air, radiant node and emitters at zero [°C]
  'feltAir', // per kelvin of mean air temperature [K/K]
  'feltRadiant', // per kelvin of the radiant node [K/K]
  'feltPerRadiated', // less, per watt that radiates onto the surfaces [K/W]
  'setting', // of the thermostat, -Infinity for off [°C]
  'band', // below the setting by so much its emitters give their most; 0 holds it exactly [K]
  'heatOverWeight', // one over the implicit weight [-]
  'coolSetting', // setpoint of cooling, Infinity for off [°C]
  'coolMost', // most sensible heat that its coolers can remove in this step [W]
  'coolRadiant', // of that, what surfaces radiate to them [W]
  'coolShare', // the same as a share [-]
  'cooling', // sensible heat removed [W]
  'coilAir', // air that coils dry [kg/s]
  'coilWater', // vapour it leaves them with [kg/s]
  'emitted', // by emitters [W]
  'low', // least that its emitters can give in this step [W]
  'high', // most [W]
  'phase', // latent heat given to the room in the next step [W]
  'freed', // latent heat of this step [W]
  'owed', // latent heat of steps before, still to be given to the room [W]
  'sun', // through panes [W]
  'deviceHeat', // of devices, to the air [W]
  'deviceRadiant', // of devices, to the surfaces [W]
  'radiantGain', // of people, appliances and devices [W]
  // Water.
  'humidity', // at the start [kg/kg]
  'meanHumidity', // mean over the step, or the one before until it is solved [kg/kg]
  'buffer', // relative humidity of what buffers, 0 to 1 [-]
  'deep', // and of the deep store [-]
  'pressure', // vapour pressure for one unit of humidity ratio [Pa]
  'saturation', // at the mean air temperature [Pa]
  'uptake', // vapour into the buffer per pascal, both stores eliminated [kg/(s Pa)]
  'release', // vapour out of the buffer into perfectly dry air [kg/s]
  'intoDeep', // vapour from buffer to deep store per unit of relative humidity, deep store eliminated [kg/s]
  'waterOverWeight', // -
  'mostHumidity', // of saturated air at the mean air temperature [kg/kg]
  'saturated', // 1 where the air is held at that
  'ownLoss', // of the equation that this replaces: its diagonal [kg/s]
  'ownGain', // and its right-hand side [kg/s]
  'falling', // out of saturated air [kg/s]
  'condensing', // on panes, net [kg/s]
  'wallCondensing', // on cold corners, tiles and out of saturated air, net [kg/s]
  'wetG', // vapour to films that were wet a step before [kg/(s Pa)]
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
  'emission', // given off by materials [species unit m3/s]
  'filter', // cleaned by devices [m3/s of room air]
  'deposition', // loss by falling out [m3/s of room air]
  'overWeight', // one over the implicit weight of the step [-]
]);

/** Fields of a surface that water can stand on: a pane, a cold corner, tiles. */
export const FILM = fields([
  'drop', // room to inner surface, over room to outdoors [-]
  'radiantShare', // of what a pane sees of its room [-]
  'skyDrop', // of what a pane sees outdoors, below the air [K]
  'vapourG', // vapour from room air to it [kg/(s Pa)]
  'most', // water that it can hold [kg]
  'water', // on it [kg]
  'wet', // 1 where it exchanges freely with the air this step, 0 where it can only dry out
  'saturation', // at its surface [Pa]
  'condensing', // net [kg/s]
]);

/** Fields of what is imposed on a room in a step; NaN where that is nothing. */
export const IMPOSED = fields([
  'temperature', // of the air at the end of the step [°C]
  'humidity', // kg/kg
  'relativeHumidity', // %
  'heat', // given to the air besides [W]
  'vapour', // kg/s
  'windows', // open share of all its windows [-]
  'outdoorAir', // in place of leaks and windows [m3/s]
  'meanTemperature', // mean over the step that leads to the temperature [°C]
  'meanHumidity', // and to the humidity [kg/kg]
]);

/** Fields of a blind. What it takes off is that of closing it wholly. */
export const BLIND = fields([
  'closed', // share, mean over the step [-]
  'sun', // share that it takes off the sun through its pane [-]
  'air', // off what its pane passes from air to outdoors [W/K]
  'radiant', // from the radiant node to outdoors [W/K]
  'between', // added to what joins air and radiant node by way of the pane [W/K]
  'airSky', // off what goes from air to a sky colder than the air outdoors [W]
  'radiantSky', // from the radiant node [W]
  'openDrop', // room to glass, over room to outdoors, with the blind open [-]
  'closedDrop', // and closed [-]
]);

/** Fields of a room with blinds: its panes with every blind open, and what of the matrix they are in. */
export const SHADED = fields([
  'air', // W/K
  'radiant', // W/K
  'between', // W/K
  'airSky', // W
  'radiantSky', // W
  'ofAir', // diagonal of its air [W/K]
  'ofRadiant', // diagonal of its radiant node [W/K]
  'airToRadiant', // W/K
  'radiantToAir', // W/K
]);

/** Fields of a cooler. */
export const COOLER = fields([
  'power', // most heat removed, sensible and latent [W]
  'exhaust', // room air blown outdoors at full output [kg/s]
  'radiantShare', // -
  'cooled', // air that meets its coil at full output; 0 without a coil [kg/s]
  'coil', // temperature of its coil [°C]
  'coilHumidity', // of air saturated at that [kg/kg]
  'most', // sensible heat it can remove in this step [W]
  'full', // share of full output that it can run at, by its power [-]
  'share', // of full output, mean over the step [-]
  'sensible', // removed [W]
  'dried', // air that its coil dries [kg/s]
  'water', // drained [kg/s]
  'removed', // sensible and latent [W]
  'electricity', // W
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

/** Fields of a way of air in the network of room pressures; see lay-out-air-network.ts. */
export const PATH = fields([
  'friction', // pressure for a flow by volume [Pa s/m3]
  'inertia', // for its square, over the density of the air that flows [1/m4]
  'height', // above the home's height 0 [m]
  'usual', // what a pascal would send through; where a path without flow begins [kg/s]
  'open', // 1 where air can pass in this step, else 0
  'drive', // that wind and the weight of air put across it, towards its room [Pa]
  'flow', // towards its room [kg/s]
  'fixed', // what passes without pressures in rooms, in the system being solved [kg/s]
  'slope', // what a pascal more between its ends adds [kg/(s Pa)]
  'found', // flow that solves it [kg/s]
]);

/** Whole-number fields of a way of air. */
export const LINK = fields([
  'to', // room
  'from', // room, or -1 for outdoors
  'toFrom', // position in the matrix of row to, column from
  'fromTo', // position of row from, column to
  'side', // outdoors, -1 for none
]);

/** What is counted while the network of room pressures is solved. */
export const PRESSURE_COUNT = fields([
  'steps', // times that pressures were asked for
  'solved', // systems of equations
  'again', // steps for which one system was not enough
  'unsettled', // steps whose error stayed beyond the tolerance
  'error', // of the last system, see air-network.ts [-]
]);

type Fields<T extends string> = { readonly [K in T | 'stride']: number };

/** Number the fields of a record, and count them. */
function fields<const T extends string>(names: readonly T[]): Fields<T> {
  const numbered = names.map((name, k) => [name, k] as const);
  return Object.fromEntries([...numbered, ['stride', names.length]]) as Fields<T>;
}
