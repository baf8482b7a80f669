/** The few routines of the psychrolib package that tests compare with; SI units, humidity as a share. */
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperature: number): number;
    GetSatHumRatio(temperature: number, pressure: number): number;
    GetTDewPointFromVapPres(temperature: number, vapourPressure: number): number;
    GetHumRatioFromVapPres(vapourPressure: number, pressure: number): number;
    GetVapPresFromHumRatio(humidityRatio: number, pressure: number): number;
    GetRelHumFromVapPres(temperature: number, vapourPressure: number): number;
    GetHumRatioFromRelHum(temperature: number, relativeHumidity: number, pressure: number): number;
    GetMoistAirEnthalpy(temperature: number, humidityRatio: number): number;
    GetMoistAirVolume(temperature: number, humidityRatio: number, pressure: number): number;
    GetMoistAirDensity(temperature: number, humidityRatio: number, pressure: number): number;
    GetTWetBulbFromHumRatio(temperature: number, humidityRatio: number, pressure: number): number;
    GetHumRatioFromTWetBulb(temperature: number, wetBulb: number, pressure: number): number;
    GetStandardAtmPressure(elevation: number): number;
  }
  const psychrometrics: Psychrometrics;
  export = psychrometrics;
}
