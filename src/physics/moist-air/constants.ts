/** 0 °C on the absolute scale. [K] */
export const ZERO_CELSIUS = 273.15;

/** Triple point of water. [°C] */
export const TRIPLE_POINT = 0.01;

/** Molar mass of water over that of dry air. [-] ASHRAE Fundamentals (2017) ch. 1. */
export const MOLAR_RATIO = 0.621945;

/** Gas constant of dry air. [J/(kg K)] ASHRAE Fundamentals (2017) ch. 1 eq. 1. */
export const DRY_AIR_GAS_CONSTANT = 287.042;

/** Gas constant of water vapour: that of dry air over the molar ratio. [J/(kg K)] */
export const VAPOUR_GAS_CONSTANT = DRY_AIR_GAS_CONSTANT / MOLAR_RATIO;

/** Density of dry air at 20 °C and 101 325 Pa. [kg/m3] */
export const DRY_AIR_DENSITY = 1.2041;

/** Specific heat of dry air. [J/(kg K)] */
export const DRY_AIR_HEAT = 1006;

/** Specific heat of water vapour. [J/(kg K)] */
export const VAPOUR_HEAT = 1860;

/** Air temperatures that the moist-air formulas accept. [°C] */
export const AIR_TEMPERATURES = [-100, 200] as const;

/** Air pressures that the moist-air formulas accept, from a high mountain to a deep mine. [Pa] */
export const AIR_PRESSURES = [20_000, 180_000] as const;

/** Humidity ratios that the moist-air formulas accept, from dry air to steam bath and beyond. [kg/kg] */
export const HUMIDITY_RATIOS = [0, 1] as const;
