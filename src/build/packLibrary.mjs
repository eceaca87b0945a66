import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root, run } from './ensureInstalled.mjs';

// What `npm pack` packs: the library, compiled, with the packages it stands on, and nothing of the site. npm calls this before
// packing, and with `after` behind it. Meanwhile package.json is that of the library; the site's own waits in .cache, and is put
// back at the next call, too, should packing have been broken off.

const own = join(root, 'package.json');
const kept = join(root, '.cache/package.json');
const built = join(root, 'lib');
const stoodOn = ['martinez-polygon-clipping', 'pure-rand', 'quadprog'];

function putBack() {
  rmSync(built, { recursive: true, force: true });
  if (!existsSync(kept)) return;
  copyFileSync(kept, own);
  rmSync(kept);
}

putBack();
if (process.argv[2] !== 'after') {
  if (run('tsc', ['-p', 'src/build/library.tsconfig.json']) !== 0) {
    putBack();
    process.exit(1);
  }
  const {
    name,
    version,
    private: isPrivate,
    type,
    license,
    engines,
    dependencies,
    scripts,
  } = JSON.parse(readFileSync(own, 'utf8'));
  const library = {
    name,
    version,
    private: isPrivate,
    type,
    license,
    engines,
    description: 'The sums behind Tautline: brow mapping, healed colour and recipes, with their doubt.',
    sideEffects: false,
    exports: { '.': { types: './lib/index.d.ts', default: './lib/index.js' } },
    files: ['lib'],
    dependencies: Object.fromEntries(stoodOn.map((one) => [one, dependencies[one]])),
    bundleDependencies: stoodOn,
    // npm reads this when it has packed.
    scripts: { postpack: scripts.postpack },
  };
  mkdirSync(dirname(kept), { recursive: true });
  copyFileSync(own, kept);
  writeFileSync(own, `${JSON.stringify(library, undefined, 2)}\n`);
}
