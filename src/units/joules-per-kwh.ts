/** [J/kWh] */
export const JOULES_PER_KWH = 3.6e6;
