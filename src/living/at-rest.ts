/** Where all knobs stand before anybody turns one. */
export { AS_IT_IS } from '../studies/trial/knobs.ts';
