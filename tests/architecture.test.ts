import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

function filesIn(folder: string, ending: RegExp): readonly string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const withoutComments = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' '))
    .replace(/(^|[^:'"`])\/\/.*$/gm, '$1');

/** Every module a file asks for: static, dynamic and re-exported. */
function importsOf(file: string): readonly string[] {
  if (!file.endsWith('.astro'))
    return ts.preProcessFile(read(file)).importedFiles.map(({ fileName }) => fileName);
  return [...read(file).matchAll(/^\s*import\s(?:[^'";]*\sfrom\s*)?['"]([^'"]+)['"]/gm)].flatMap(
    (hit) => hit[1] ?? [],
  );
}

/** The project file an import names, as a path from the root; undefined for packages. */
function targetOf(file: string, name: string): string | undefined {
  if (name.startsWith('.')) return normalize(join(dirname(file), name)).replaceAll('\\', '/');
  const inside = /^#(\w+)\/(.+)$/.exec(name);
  return inside
    ? `${inside[1] === 'components' || inside[1] === 'tests' ? inside[1] : `src/${inside[1]}`}/${inside[2]}`
    : undefined;
}

const code = /\.(ts|tsx|astro|mjs)$/;
/** From the ground up. A file imports from its own layer's folder and from layers below. */
const layers = [
  ['src/lib'],
  ['src/words'],
  ['src/checks', 'src/worked', 'src/skills', 'src/calculators'],
  ['src/plan', 'src/exports'],
  ['components', 'src/layouts'],
  ['src/pages', 'src/content.config.ts'],
] as const;
const layerOf = (path: string): number =>
  layers.findIndex((folders) => folders.some((folder) => path === folder || path.startsWith(`${folder}/`)));
const all = layers.flat().flatMap((folder) => (code.test(folder) ? [folder] : filesIn(folder, code)));

test('[hand] imports run one way: lib, words, then checks, worked, skills and calculators, then components, then pages', () => {
  const wrong = all.flatMap((file) =>
    importsOf(file).flatMap((name) => {
      const target = targetOf(file, name);
      if (target === undefined) return [];
      const [here, there] = [layerOf(file), layerOf(target)];
      const isBuildHelp = target.startsWith('src/build/') && here >= 4;
      // What the build writes before the pages are read: src/build/skillIslands.ts.
      const isWritten = target.startsWith('.astro/integrations/') && here >= 4;
      const isStyle = target.startsWith('src/styles/') && here >= 4;
      return (there >= 0 && there <= here) || isBuildHelp || isWritten || isStyle
        ? []
        : [`${file} imports ${name}`];
    }),
  );
  expect(wrong).toEqual([]);
});

test('[hand] checks, worked examples, skills and calculators do not import each other', () => {
  const rooms = layers[2];
  const roomOf = (path: string) => rooms.find((room) => path.startsWith(`${room}/`));
  const wrong = rooms.flatMap((room) =>
    filesIn(room, code).flatMap((file) =>
      importsOf(file).flatMap((name) => {
        const other = roomOf(targetOf(file, name) ?? '');
        return other === undefined || other === room ? [] : [`${file} imports ${name}`];
      }),
    ),
  );
  expect(wrong).toEqual([]);
});

const libFiles = filesIn('src/lib', /\.ts$/);
/**
 * What a subject of the library may stand on, besides itself. Evidence and quantities are the ground for all.
 */
const ground = new Set(['algebra', 'evidence', 'quantities', 'tables']);
const mayUse: Readonly<Record<string, readonly string[]>> = {
  mapping: ['geometry'],
  face: ['geometry', 'mapping'],
  entry: ['geometry', 'mapping', 'face', 'colour'],
};

test('[hand] subjects of the library do not import each other', () => {
  const wrong = libFiles.flatMap((file) =>
    importsOf(file).flatMap((name) => {
      const [subject, other] = [file, targetOf(file, name) ?? file].map((path) => path.split('/')[2] ?? '');
      // A file beside the subjects gathers them; no subject imports it.
      if (subject?.endsWith('.ts') || subject === other || other === undefined || subject === undefined)
        return [];
      const isGround = ground.has(other) && (!ground.has(subject) || other !== 'evidence');
      return isGround || mayUse[subject]?.includes(other) ? [] : [`${file} imports ${name}`];
    }),
  );
  expect(wrong).toEqual([]);
});

/** Packages the library may use: random numbers, quadratic programs, polygons. */
const libraryPackages = /^(pure-rand\/|quadprog$|martinez-polygon-clipping$)/;

test('[hand] the library imports only its own files, with .ts, and the three packages it stands on', () => {
  const wrong = libFiles.flatMap((file) =>
    importsOf(file)
      .filter((name) => !(/^\.{1,2}\/.+\.ts$/.test(name) || libraryPackages.test(name)))
      .map((name) => `${file} imports ${name}`),
  );
  expect(wrong).toEqual([]);
});

test('[hand] the library knows no clock, no chance, no page, no network, no process', () => {
  const banned =
    /\b(?:Date\.now|new Date\(\)|Date\(\)|Math\.random|performance\.|crypto\.|document\.|window\.|navigator\.|localStorage|fetch\(|process\.|console\.|globalThis|setTimeout|requestAnimationFrame)/;
  const wrong = libFiles.flatMap((file) =>
    withoutComments(read(file))
      .split('\n')
      .flatMap((line, index) => (banned.test(line) ? [`${file}:${index + 1}: ${line.trim()}`] : [])),
  );
  expect(wrong).toEqual([]);
});

/** What the library's TypeScript may not contain, by the compiler's own reading. */
function bannedIn(node: ts.Node): string | undefined {
  if (ts.isClassLike(node)) return 'a class';
  if (ts.isEnumDeclaration(node)) return 'an enum';
  if (node.kind === ts.SyntaxKind.AnyKeyword) return 'any';
  if (ts.isNonNullExpression(node)) return 'a promise of presence (!)';
  if (ts.isTypeAssertionExpression(node) || (ts.isAsExpression(node) && !ts.isConstTypeReference(node.type)))
    return 'a cast';
  return undefined;
}

test("[library] the library has no classes, enums, any, casts or promises of presence, by the compiler's reading", () => {
  const wrong = libFiles.flatMap((file) => {
    const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
    const found: string[] = [];
    const visit = (node: ts.Node): void => {
      const banned = bannedIn(node);
      if (banned)
        found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${banned}`);
      ts.forEachChild(node, visit);
    };
    visit(source);
    return found;
  });
  expect(wrong).toEqual([]);
});

/** Longest file of code, in formatted lines. What is longer says why. */
const mostLines = 250;
const mayBeLonger: Readonly<Record<string, string>> = {
  'components/calculator/colour/FindRecipe.tsx':
    'one form with its answer, to be made anew with the colour pages',
  'components/pictures/face/peopleOlder.ts': 'drawn people: data',
  'components/pictures/face/peopleYounger.ts': 'drawn people: data',
  'components/practice/useProblem.ts': 'one state of one problem, to share its core with the placed midline',
  'src/checks/colour/conversions.ts': 'rows of printed values',
  'src/checks/mapping/shape.ts': 'rows of printed values',
  'tests/architecture.test.ts': 'rules that hold for every file',
  'tests/journeys/fiveWays.ts': 'five ways to move a mark, for every calculator',
  'tests/journeys/notFetched.test.ts': 'one row for every part that is fetched on demand',
  'tests/journeys/worstStrings.ts': 'a list of texts',
  'tests/lib/exports.test.ts': 'a good call of each export of the library',
  'tests/lib/mapping/plan/planHeights.test.ts': 'plans by hand and by simulation',
};

test('[hand] no file of code is longer than 250 lines, tables excepted, or says why', () => {
  const files = ['src', 'components', 'tests'].flatMap((folder) => filesIn(folder, /\.(ts|tsx|mjs)$/));
  const isTable = /^src\/lib\/tables\/|Cases\.ts$/;
  const linesOf = (file: string): number => read(file).trimEnd().split('\n').length;
  const long = files.filter((file) => !isTable.test(file) && linesOf(file) > mostLines);
  expect(long.filter((file) => !Object.hasOwn(mayBeLonger, file))).toEqual([]);
  expect(Object.keys(mayBeLonger).filter((file) => !long.includes(file))).toEqual([]);
});

test('[hand] content holds words and ids: no imports, no exports, no markup of its own styling', () => {
  const wrong = filesIn('content', /\.mdx?$/).flatMap((file) =>
    read(file)
      .split('\n')
      .flatMap((line, index) =>
        /^\s*(?:import|export)\s|\bstyle=|<script\b|\bclassName=/.test(line)
          ? [`${file}:${index + 1}: ${line.trim()}`]
          : [],
      ),
  );
  expect(wrong).toEqual([]);
});

test('[hand] no source writes an inline style', () => {
  const wrong = [...all, ...filesIn('src/build', code)]
    .filter((file) => !file.startsWith('src/build/gates/'))
    .flatMap((file) =>
      withoutComments(read(file))
        .split('\n')
        .flatMap((line, index) =>
          /\sstyle=["'{]|\.style\.(?!setProperty)|\.style\s*=|setAttribute\(['"]style/.test(line)
            ? [`${file}:${index + 1}: ${line.trim()}`]
            : [],
        ),
    );
  expect(wrong).toEqual([]);
});

test('[hand] no file names a place on one machine or a package server', () => {
  const files = ['src', 'components', 'content', 'tests', 'public'].flatMap((folder) =>
    filesIn(folder, /\.(ts|tsx|mjs|astro|mdx?|css|json|yml|svg|webmanifest)$/),
  );
  const kept = [
    'README.md',
    'DEVELOPERS.md',
    'package.json',
    'package-lock.json',
    'astro.config.mjs',
    'tsconfig.json',
    '.npmrc',
    '.ci/run',
  ].filter((file) => existsSync(join(root, file)));
  const places = new RegExp(
    [
      '/wo' + 'rk/',
      '/ro' + 'ot/',
      '/ho' + 'me/\\w',
      '/Us' + 'ers/',
      'registry\\.\\w+js\\.org',
      'sha' + 'red/design',
    ].join('|'),
  );
  const wrong = [...files, ...kept].flatMap((file) =>
    read(file)
      .split('\n')
      .flatMap((line, index) =>
        places.test(line) ? [`${file}:${index + 1}: ${line.trim().slice(0, 100)}`] : [],
      ),
  );
  expect(wrong).toEqual([]);
});

test('[hand] every id of the content is unique and is the name of its file', () => {
  const wrong: string[] = [];
  for (const folder of ['content/calculators', 'content/rules', 'content/glossary', 'content/pages']) {
    const seen = new Map<string, string>();
    for (const file of filesIn(folder, /\.mdx?$/)) {
      const id = /^id:\s*['"]?([a-z0-9-]+)/m.exec(read(file))?.[1];
      const name = file
        .split('/')
        .at(-1)
        ?.replace(/\.mdx?$/, '');
      if (id === undefined) wrong.push(`${file} has no id`);
      else if (id !== name) wrong.push(`${file} has the id ${id}`);
      else if (seen.has(id)) wrong.push(`${file} and ${seen.get(id)} share the id ${id}`);
      else seen.set(id, file);
    }
  }
  expect(wrong).toEqual([]);
});

test('[hand] every dependency is pinned to one exact version', () => {
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(read('package.json'));
  const loose = Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(String(version)),
  );
  expect(loose).toEqual([]);
});

test('[hand] every test says in its title what kind of check it is', () => {
  const wrong = filesIn('tests', /\.test\.ts$/).flatMap((file) =>
    [...read(file).matchAll(/^\s*(?:test|it)(?:\.each\([\s\S]*?\))?\(\s*(['"`])(.*?)\1/gm)]
      .filter((hit) => !/^\[(table|library|property|hand)\]/.test(hit[2] ?? ''))
      .map((hit) => `${file}: ${hit[2]}`),
  );
  expect(wrong).toEqual([]);
});
