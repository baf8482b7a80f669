import { Command } from 'commander';
import type { Io } from '../io.ts';
import { logDescribeCommand } from './log-describe.ts';

/** `log <describe>`: everything about readings of a home's own sensors and meters. */
export function logCommand(io: Io): Command {
  return new Command('log')
    .summary("look at readings of a home's own sensors")
    .description("Look at what a home's own sensors and meters logged.")
    .addCommand(logDescribeCommand(io))
    .addHelpText('after', '\nExample:\n  $ roombalance log describe bedroom.csv');
}
