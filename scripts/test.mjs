// npm test: every check, in the order in which a failure is cheapest to learn of.
import { spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { bringPageReaders, chromiumPath } from './chromium.mjs';
import { installWhatIsMissing } from './installed.mjs';

installWhatIsMissing();
bringPageReaders();
const CHROMIUM_PATH = await chromiumPath();

/** Each drives a browser, which wants a core; more than a few at once are no quicker. */
const browsers = Math.min(4, availableParallelism());

/** A browser on a busy machine may miss a beat, which is told as such; a fault fails twice. */
const again = ['--retries', '1'];

const steps = [
  ['types', 'tsc', ['-p', 'tsconfig.json']],
  ['types of the pure core', 'tsc', ['-p', 'tsconfig.core.json']],
  ['lint and format', 'biome', ['check', '.']],
  ['structure', 'depcruise', ['app', 'core', '--config', '.dependency-cruiser.cjs']],
  ['nothing left over', 'knip', []],
  ['unit tests', 'vitest', ['run']],
  ['build', 'vite', ['build', '--logLevel', 'warn']],
  ['browser tests', 'playwright', ['test', '--grep-invert', '@alone', '--workers', String(browsers), ...again]],
  ['browser tests that look at the clock', 'playwright', ['test', '--grep', '@alone', '--workers', '1', ...again]],
];

let passed = 0;
for (const [name, command, args] of steps) {
  console.log(`\n— ${name}`);
  const began = Date.now();
  const { status } = spawnSync('npx', ['--no-install', command, ...args], {
    stdio: 'inherit',
    env: { ...process.env, CHROMIUM_PATH },
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.log(`\n${name} failed.\n${passed} passed, 1 failed`);
    process.exit(1);
  }
  passed += 1;
  console.log(`  done in ${((Date.now() - began) / 1000).toFixed(0)} s`);
}
console.log(`\n${passed} passed, 0 failed`);
