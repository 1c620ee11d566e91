// Bundles the tests (this Node reads no TypeScript) into a throw-away folder and runs them with Node's own runner.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

const tests = readdirSync('test').filter((name) => name.endsWith('.test.ts'));
const folder = mkdtempSync(join(tmpdir(), 'viewer-test-'));
try {
  await build({
    entryPoints: tests.map((name) => `test/${name}`),
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  const files = tests.map((name) => join(folder, name.replace(/\.ts$/, '.mjs')));
  process.exitCode = spawnSync(process.execPath, ['--enable-source-maps', '--test', ...files], { stdio: 'inherit' }).status ?? 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
