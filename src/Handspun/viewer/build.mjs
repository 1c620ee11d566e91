// Type-checks and bundles the viewer into wwwroot/built. Files appear whole (written beside, then renamed), so that a
// page served meanwhile never reads half a script.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { build } from 'esbuild';

const out = resolve('../wwwroot/built');

try {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '--noEmit'], { stdio: 'inherit' });
} catch {
  process.exit(1);
}

const result = await build({
  entryPoints: {
    bay: 'src/bay.ts',
    job: 'src/job.ts',
    gauges: 'src/gauges.ts',
    screens: 'src/screens.ts',
    handspun: 'styles/handspun.css',
  },
  outdir: out,
  bundle: true,
  splitting: true,
  minify: true,
  format: 'esm',
  platform: 'browser',
  inject: ['src/node-in-browser.ts'],
  target: ['es2022', 'chrome110', 'firefox115', 'safari16.4'],
  chunkNames: '[name]-[hash]',
  assetNames: 'fonts/[name]',
  loader: { '.woff2': 'file', '.woff': 'empty' },
  legalComments: 'none',
  write: false,
  logLevel: 'warning',
});

const files = new Map(result.outputFiles.map((file) => [relative(out, file.path), file.contents]));
files.set('licences.txt', licences());

const inFolder = readdirSyncOrEmpty(out).filter((name) => !files.has(name));
for (const [name, contents] of files) {
  const path = join(out, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(`${path}.${process.pid}.part`, contents);
  renameSync(`${path}.${process.pid}.part`, path);
}
for (const stale of inFolder.filter((name) => /\.(js|css|woff2?|map)$/.test(name))) rmSync(join(out, stale), { force: true });

function readdirSyncOrEmpty(folder) {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)));
  } catch {
    return [];
  }
}

/** The licences of everything that may have been bundled, as the licences ask. */
function licences() {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  return Object.entries(packages)
    .filter(([path, entry]) => path && !entry.dev && !entry.optional)
    .map(([path, entry]) => {
      const file = readdirSync(path).find((name) => /^licen[cs]e/i.test(name));
      const text = file ? readFileSync(join(path, file), 'utf8').trim() : `Licence: ${entry.license}`;
      return `${path.replace(/^.*node_modules\//, '')} ${entry.version}\n\n${text}\n`;
    })
    .join('\n----------------------------------------\n\n');
}
