import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { packedLibrary, ran, readmeExample, writeUses } from '../tools/packedLibrary.ts';

/** The oldest Node the library promises, and the one between it and the site's own. */
const majors = [20, 22];

/** What was said, numbers to nine digits: an engine's own sines and roots differ in the last ones. */
const rounded = (said: string) => said.trim().replace(/-?\d+\.\d+/g, (digits) => Number(digits).toFixed(9));

/** Runs the packed library on older Nodes, each fetched as a package for this platform. */
export function olderNodes() {
  const library = packedLibrary();
  const home = mkdtempSync(join(tmpdir(), 'tautline-nodes-'));
  try {
    writeUses(library.folder);
    const rows = majors.map((major) => {
      const name = `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}`;
      const prefix = join(home, `${major}`);
      ran(home, 'npm', [
        'install',
        '--prefix',
        prefix,
        '--ignore-scripts',
        '--no-audit',
        '--no-fund',
        '--silent',
        `${name}@${major}`,
      ]);
      const node = join(
        prefix,
        'node_modules',
        name,
        'bin',
        process.platform === 'win32' ? 'node.exe' : 'node',
      );
      const version = ran(home, node, ['--version']).trim();
      if (!version.startsWith(`v${major}.`)) throw new Error(`Node ${major} was wanted, ${version} came.`);
      return { version, said: rounded(ran(library.folder, node, [readmeExample])) };
    });
    const own = rounded(ran(library.folder, process.execPath, [readmeExample]));
    const apart = rows.filter(({ said }) => said !== own);
    if (apart.length > 0)
      throw new Error(
        `Other answers than on ${process.version}: ${apart.map(({ version, said }) => `${version}: ${said}`).join('; ')}`,
      );
    return { versions: rows.map(({ version }) => version), sameAnswersAs: process.version };
  } finally {
    library.remove();
    rmSync(home, { recursive: true, force: true });
  }
}
