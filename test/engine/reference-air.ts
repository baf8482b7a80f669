import { humidityRatioFromRelativeHumidity } from '../../src/physics/moist-air/humidity-ratio.ts';
import { moistAirHeatCapacity } from '../../src/physics/moist-air/moist-air-heat-capacity.ts';
import { dryAirDensity } from '../../src/physics/moist-air/moist-air-volume.ts';

const HUMIDITY_RATIO = humidityRatioFromRelativeHumidity(20, 50, 101_325);

/** Dry air in a cubic metre of the air that a run reckons with: 20 °C, 50 %, 101 325 Pa. [kg/m3] */
export const AIR_DENSITY = dryAirDensity(20, HUMIDITY_RATIO, 101_325);

/** Heat that warms a cubic metre of it by a kelvin; a third of a watt-hour in handbooks. [J/(m3 K)] */
export const AIR_HEAT = AIR_DENSITY * moistAirHeatCapacity(HUMIDITY_RATIO);
