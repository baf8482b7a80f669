/*
 * Air by pressures: the laws of cracks and holes, wind on the shell, how a home's leakage is shared
 * out, and the network that solves for the pressures of its rooms. Apart from index.ts, because runs
 * still take leakage from the basic model.
 */

export { setDensities, setDrives } from './engine/air-drives.ts';
export { solvePressures } from './engine/air-network.ts';
export { bookPaths } from './engine/book-paths.ts';
export {
  type AirNetwork,
  layOutAirNetwork,
  type PathKind,
  type PathPlan,
} from './engine/lay-out-air-network.ts';
export { DOOR, LINK, PATH, PRESSURE_COUNT, ROOM } from './engine/state-layout.ts';
export { type Side, setWind, windTable } from './engine/wind-on-sides.ts';
export { CRACK_EXPONENT, crackFlow } from './physics/airflow/crack-flow.ts';
export { coefficientOfLeakageArea, effectiveLeakageArea } from './physics/airflow/leakage-area.ts';
export { type Crack, type ShellPart, splitLeakage } from './physics/airflow/leakage-split.ts';
export { localWindRatio, type Terrain } from './physics/airflow/local-wind.ts';
export { orificeFlow, SHARP_EDGED } from './physics/airflow/orifice-flow.ts';
export { type PartyWallShare, partyWallShare } from './physics/airflow/party-wall-share.ts';
export {
  type FlowAt,
  type QuadraticLaw,
  quadraticFlow,
  quadraticLaw,
  quadraticPressure,
} from './physics/airflow/quadratic-law.ts';
export { roofPressureCoefficient } from './physics/airflow/roof-pressure-coefficient.ts';
export { shieldingRatio } from './physics/airflow/shielding-ratio.ts';
export { stackPressure } from './physics/airflow/stack-pressure.ts';
export { wallPressureCoefficient } from './physics/airflow/wall-pressure-coefficient.ts';
