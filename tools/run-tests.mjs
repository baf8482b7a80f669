// Builds, then tests what was built, and beside the tests checks types, format, lint and unused code; what
// a check finds ends the tests.
import { spawn } from 'node:child_process';

const windows = process.platform === 'win32';
const npmRun = (script, stdio) => spawn('npm', ['run', '--silent', script], { stdio, shell: windows });

const unbuilt = await ending(npmRun('build', 'inherit'));
if (unbuilt !== 0) process.exit(unbuilt);

// A group of its own, so that what tests have started ends with them.
const tests = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', 'run'], {
  stdio: 'inherit',
  detached: !windows,
  env: { ...process.env, AS_BUILT: '1' },
});
const endTests = () => (windows ? tests.kill() : process.kill(-tests.pid, 'SIGTERM'));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.once(signal, () => {
    endTests();
    process.exit(1);
  });
}

const checked = toldAtEnd('check:built').then((status) => {
  if (status !== 0 && tests.exitCode === null) endTests();
  return status;
});
const [wrong, failed] = await Promise.all([checked, ending(tests)]);
process.exit(wrong || failed);

/** The exit status of a script, whose words come once it has ended. */
async function toldAtEnd(script) {
  const said = [];
  const child = npmRun(script, ['ignore', 'pipe', 'pipe']);
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => said.push(piece));
  const status = await ending(child);
  process.stdout.write(Buffer.concat(said));
  return status;
}

/** Its exit status; 1 where it was killed. */
function ending(child) {
  return new Promise((done) => child.on('close', (status) => done(status ?? 1)));
}
