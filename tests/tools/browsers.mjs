import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

// Plain JavaScript that runs on Node 20: the test run needs it before anything is installed.

/**
 * The two browsers every test runs in: where they are, the Debian package that brings each, and the last
 * version that was too old.
 */
export const browsers = {
  chromium: { path: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium', package: 'chromium' },
  firefox: { path: process.env.FIREFOX_PATH ?? '/usr/bin/firefox-esr', package: 'firefox-esr', tooOld: 140 },
};

/** What reads a printed page back into words. */
const paperReader = { path: process.env.PDFTOTEXT_PATH ?? '/usr/bin/pdftotext', package: 'poppler-utils' };

/** Switches for a quiet Chromium in a container: no sandbox as root, no graphics card, no calls home. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-default-apps',
  '--disable-dev-shm-usage',
  '--force-color-profile=srgb',
];

/** True where a program is there and not known to be too old. */
function isThere({ path, tooOld }) {
  if (!existsSync(path) || tooOld === undefined) return existsSync(path);
  const version = /\d+/.exec(spawnSync(path, ['--version'], { encoding: 'utf8' }).stdout ?? '');
  return version === null || Number(version[0]) > tooOld;
}

/**
 * Installs a missing or outdated browser or the paper reader where that is allowed; otherwise stops with the
 * one command to type.
 */
export function ensureBrowsers() {
  const missing = [...Object.values(browsers), paperReader].filter((program) => !isThere(program));
  if (missing.length === 0) return;
  const names = missing.map((browser) => browser.package);
  const isRoot = process.getuid?.() === 0;
  const sudo = isRoot ? [] : ['sudo', '-n'];
  const works = (command) =>
    spawnSync(command[0], command.slice(1), {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0;
  const canInstall = works([...sudo, 'apt-get', '--version']);
  console.log(`Missing or too old: ${names.join(', ')}.`);
  if (
    canInstall &&
    works([...sudo, 'apt-get', 'update', '-q']) &&
    works([...sudo, 'apt-get', 'install', '-y', '-q', '--no-install-recommends', ...names])
  ) {
    if (missing.every(isThere)) return;
  }
  console.error(
    `Install what is missing or too old, then run the tests again:\n\n  sudo apt-get install ${names.join(' ')}\n\nA browser somewhere else: set CHROMIUM_PATH or FIREFOX_PATH.`,
  );
  process.exit(1);
}
