/** Like `array.fill(value)`, whose call out of the compiled loop a handful of numbers does not repay. */
export function fillArray(array: Float64Array | Uint8Array, value: number): void {
  for (let k = 0; k < array.length; k++) array[k] = value;
}
