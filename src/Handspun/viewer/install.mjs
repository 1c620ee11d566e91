// Runs `npm ci` once, also when two builds start together: the second waits and finds the work done.
import { execSync } from 'node:child_process';
import { mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs';

const stamp = 'node_modules/.installed';
const turnstile = '.installing';
const inputs = ['package.json', 'package-lock.json', '.npmrc', 'install.mjs'];
const patienceMs = 300_000;

const modified = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
const isInstalled = () => modified(stamp) > Math.max(...inputs.map(modified));
const pause = (ms) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);

for (let waited = 0; ; waited += 250) {
  try {
    mkdirSync(turnstile);
    break;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    if (waited > patienceMs) {
      console.error('Another build has been installing the viewer\'s packages for five minutes. If none is running, delete the folder viewer/.installing.');
      process.exit(1);
    }
    pause(250);
  }
}

try {
  if (!isInstalled()) {
    execSync('npm ci --no-audit --no-fund --loglevel=error', { stdio: 'inherit' });
    writeFileSync(stamp, '');
  }
} finally {
  rmSync(turnstile, { recursive: true });
}
