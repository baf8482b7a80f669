// Builds, then checks types, format, lint and unused code beside the tests; what a check finds ends both.
import { spawn } from 'node:child_process';

const windows = process.platform === 'win32';
const npmRun = (script, stdio) => spawn('npm', ['run', '--silent', script], { stdio, shell: windows });

const unbuilt = await ending(npmRun('build', 'inherit'));
if (unbuilt !== 0) process.exit(unbuilt);

const said = [];
const check = npmRun('check:built', ['ignore', 'pipe', 'pipe']);
for (const stream of [check.stdout, check.stderr]) stream.on('data', (piece) => said.push(piece));
// A group of its own, so that what tests have started ends with them.
const tests = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', 'run'], {
  stdio: 'inherit',
  detached: !windows,
});
const endTests = () => (windows ? tests.kill() : process.kill(-tests.pid, 'SIGTERM'));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.once(signal, () => {
    endTests();
    process.exit(1);
  });
}

const checked = ending(check).then((status) => {
  process.stdout.write(Buffer.concat(said));
  if (status !== 0 && tests.exitCode === null) endTests();
  return status;
});
const [wrong, failed] = await Promise.all([checked, ending(tests)]);
process.exit(wrong || failed);

/** Its exit status; 1 where it was killed. */
function ending(child) {
  return new Promise((done) => child.on('close', (status) => done(status ?? 1)));
}
