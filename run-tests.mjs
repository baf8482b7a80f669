// Builds, then checks types, format, lint and unused code, all beside the tests, of which those that need
// what is built wait for it; what build or check finds ends both.
import { spawn } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';

const BUILT = 'build/built';
const windows = process.platform === 'win32';
const npmRun = (script, stdio) => spawn('npm', ['run', '--silent', script], { stdio, shell: windows });

const unwritten = await ending(spawn(process.execPath, ['build-step.mjs'], { stdio: 'inherit' }));
if (unwritten !== 0) process.exit(unwritten);

mkdirSync('build', { recursive: true });
rmSync(BUILT, { force: true });
// A group of its own, so that what tests have started ends with them.
const tests = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', 'run'], {
  stdio: 'inherit',
  detached: !windows,
  env: { ...process.env, AWAIT_BUILT: BUILT },
});
const endTests = () => (windows ? tests.kill() : process.kill(-tests.pid, 'SIGTERM'));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.once(signal, () => {
    endTests();
    process.exit(1);
  });
}

const checked = buildAndCheck().then((status) => {
  if (status !== 0 && tests.exitCode === null) endTests();
  return status;
});
const [wrong, failed] = await Promise.all([checked, ending(tests)]);
process.exit(wrong || failed);

async function buildAndCheck() {
  const unbuilt = await toldAtEnd('build:rest');
  if (unbuilt !== 0) return unbuilt;
  writeFileSync(BUILT, '');
  return toldAtEnd('check:built');
}

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
