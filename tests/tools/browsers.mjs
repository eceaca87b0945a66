import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

// Plain JavaScript that runs on Node 20: the test run needs it before anything is installed.

/** The two browsers every test runs in: where they are, and the Debian package that brings each. */
export const browsers = {
  chromium: { path: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium', package: 'chromium' },
  firefox: { path: process.env.FIREFOX_PATH ?? '/usr/bin/firefox-esr', package: 'firefox-esr' },
};

/** What reads a printed page back into words. */
const paperReader = { path: process.env.PDFTOTEXT_PATH ?? '/usr/bin/pdftotext', package: 'poppler-utils' };

/** Switches for a quiet Chromium in a container: no sandbox as root, no graphics card, no calls home. */
export const chromiumFlags = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update',
  '--disable-sync', '--disable-default-apps', '--disable-dev-shm-usage', '--force-color-profile=srgb',
];

/** Installs a missing browser or the paper reader where that is allowed; otherwise stops with the one command to type. */
export function ensureBrowsers() {
  const missing = [...Object.values(browsers), paperReader].filter(({ path }) => !existsSync(path));
  if (missing.length === 0) return;
  const names = missing.map((browser) => browser.package);
  const isRoot = process.getuid?.() === 0;
  const sudo = isRoot ? [] : ['sudo', '-n'];
  const works = (command) => spawnSync(command[0], command.slice(1), { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status === 0;
  const canInstall = works([...sudo, 'apt-get', '--version']);
  console.log(`Missing: ${names.join(', ')}.`);
  if (canInstall && works([...sudo, 'apt-get', 'update', '-q']) && works([...sudo, 'apt-get', 'install', '-y', '-q', '--no-install-recommends', ...names])) {
    if (missing.every(({ path }) => existsSync(path))) return;
  }
  console.error(`Install what is missing, then run the tests again:\n\n  sudo apt-get install ${names.join(' ')}\n\nA browser somewhere else: set CHROMIUM_PATH or FIREFOX_PATH.`);
  process.exit(1);
}
