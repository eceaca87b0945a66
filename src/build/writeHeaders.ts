import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { attribute, type BuiltPage, elementsOf } from './builtPages.ts';

/** A host may refuse a longer line of headers. */
const longestLine = 2000;

/**
 * Merges the content policies of all pages: one header for the whole site that allows what any page allows,
 * and no framing.
 */
export function unitePolicies(policies: Iterable<string>): string {
  const united = new Map<string, Set<string>>();
  for (const policy of policies) {
    for (const directive of policy
      .split(';')
      .map((part) => part.trim())
      .filter(Boolean)) {
      const [name = '', ...values] = directive.split(/\s+/);
      const known = united.get(name) ?? new Set<string>();
      for (const value of values) known.add(value);
      united.set(name, known);
    }
  }
  united.set('frame-ancestors', new Set(["'none'"]));
  return [...united].map(([name, values]) => [name, ...values].join(' ')).join('; ');
}

/** The content policy a page carries in its head. */
export function policyOf(page: BuiltPage): string | undefined {
  for (const element of elementsOf(page)) {
    if (
      element.tagName === 'meta' &&
      attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy'
    )
      return attribute(element, 'content');
  }
  return undefined;
}

/**
 * Writes the headers of the site in the two forms static hosts read: `_headers` and `.htaccess`. `policies`:
 * those of all pages.
 */
export function writeHeaders(folder: string, policies: Iterable<string>): void {
  const everywhere = {
    'Content-Security-Policy': unitePolicies(policies),
    'Permissions-Policy':
      'camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), bluetooth=(), midi=(), display-capture=(), browsing-topics=()',
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
  };
  // File names under _astro carry a hash of their content; the worker must be asked for anew each time.
  const byPath = { '/_astro/*': 'public, max-age=31536000, immutable', '/sw.js': 'no-cache' };
  const lines = Object.entries(everywhere).map(([name, value]) => `${name}: ${value}`);
  const tooLong = lines.find((line) => line.length > longestLine);
  if (tooLong)
    throw new Error(
      `A header of ${tooLong.length} characters is longer than hosts allow (${longestLine}): ${tooLong.slice(0, 60)}…`,
    );
  const common = [
    '/*',
    ...lines.map((line) => `  ${line}`),
    ...Object.entries(byPath).flatMap(([path, value]) => [path, `  Cache-Control: ${value}`]),
  ];
  writeFileSync(join(folder, '_headers'), `${common.join('\n')}\n`);
  const apache = [
    'ErrorDocument 404 /404.html',
    'AddType application/manifest+json .webmanifest',
    '<IfModule mod_headers.c>',
    ...Object.entries(everywhere).map(([name, value]) => `  Header always set ${name} "${value}"`),
    ...Object.entries(byPath).map(
      ([path, value]) =>
        `  Header set Cache-Control "${value}" "expr=%{REQUEST_URI} =~ m#^${path.replace('*', '')}#"`,
    ),
    '</IfModule>',
  ];
  writeFileSync(join(folder, '.htaccess'), `${apache.join('\n')}\n`);
}
