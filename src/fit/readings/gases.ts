import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';

/** What people breathe out and nothing takes away: what runs are compared with of what the air carries. */
export const GASES: readonly string[] = [CARBON_DIOXIDE.name];
