/**
 * What this process has used of the processors [ms]: unlike the time that passed it does not grow
 * while other processes have their turn.
 */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
