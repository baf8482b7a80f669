/**
 * Whole numbers of 32 bits and floating-point numbers of 64, as names: plain numbers in JavaScript,
 * told apart where the same source is compiled to WebAssembly (tools/build-step.mjs).
 */
export type i32 = number;
export type f64 = number;
