import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../../src/build/ensureInstalled.mjs';
import { copySources, environment, timeBuild } from './timeBuild.mjs';

const allCounts = [20, 200, 2000];
/**
 * The peer builds the same texts as plain pages; its largest build adds nothing to the comparison but time.
 */
const mostForPeer = 200;
const peer = { name: '@astrojs/starlight', version: '0.42.4' };
const strand = 'old-work';

/**
 * Builds the site with many generated lessons, cold, in a folder of its own, and the same texts in a peer.
 * Times only; no bar.
 */
export function manyLessons(asked) {
  const counts = asked ? asked.split(',').map(Number) : allCounts;
  if (counts.some((count) => !Number.isInteger(count) || count < 1))
    throw new Error(`Numbers of lessons, such as 20,200: not “${asked}”.`);
  const folder = mkdtempSync(join(tmpdir(), 'tautline-lessons-'));
  try {
    return {
      texts: lessonTexts().length,
      ours: buildOurs(join(folder, 'ours'), counts),
      peer: buildPeer(
        join(folder, 'peer'),
        counts.filter((count) => count <= mostForPeer),
      ),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The lessons that exist, as front matter and text. */
function lessonTexts() {
  const folder = join(root, 'content/lessons');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.mdx'))
    .toSorted()
    .map((name) => {
      const [, front = '', text = ''] =
        /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(join(folder, name), 'utf8')) ?? [];
      return { front, text, title: /^title: (["']?)(.*)\1$/m.exec(front)?.[2] ?? name };
    });
}

const numbers = (count) => Array.from({ length: count }, (_, i) => i + 1);

/**
 * Writes lessons under new names into a copy of the sources: the texts that exist, one after the other, again
 * and again.
 */
export function addLessons(folder, count) {
  const texts = lessonTexts();
  const lessons = join(folder, 'content/lessons', strand);
  mkdirSync(lessons, { recursive: true });
  for (const i of numbers(count)) {
    const { front, text, title } = texts[i % texts.length];
    const named = front
      .replace(/^title: .*$/m, `title: ${JSON.stringify(`${title}, text ${i}`)}`)
      .replace(/^strand: .*$/m, `strand: ${strand}`)
      .replace(/^order: .*$/m, `order: ${1000 + i}`);
    writeFileSync(join(lessons, `generated-${i}.mdx`), `---\n${named}\n---\n${text}`);
  }
}

function buildOurs(folder, counts) {
  copySources(folder);
  return table(counts, (count) => {
    addLessons(folder, count);
    return timeBuild(folder);
  });
}

function buildPeer(folder, counts) {
  const texts = lessonTexts();
  const {
    dependencies: { astro },
  } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const docs = join(folder, 'src/content/docs');
  mkdirSync(docs, { recursive: true });
  writeFileSync(
    join(folder, 'package.json'),
    JSON.stringify({
      name: 'peer',
      private: true,
      type: 'module',
      dependencies: { astro, [peer.name]: peer.version },
    }),
  );
  writeFileSync(
    join(folder, 'astro.config.mjs'),
    "import starlight from '@astrojs/starlight';\nimport { defineConfig } from 'astro/config';\nexport default defineConfig({ site: 'https://peer.example', integrations: [starlight({ title: 'Peer' })] });\n",
  );
  writeFileSync(
    join(folder, 'src/content.config.ts'),
    "import { docsLoader } from '@astrojs/starlight/loaders';\nimport { docsSchema } from '@astrojs/starlight/schema';\nimport { defineCollection } from 'astro:content';\nexport const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };\n",
  );
  writeFileSync(join(docs, 'index.md'), '---\ntitle: Peer\n---\nThe same texts.\n');
  if (
    spawnSync('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error'], {
      cwd: folder,
      env: environment(root),
      stdio: 'inherit',
      shell: process.platform === 'win32',
    }).status !== 0
  ) {
    throw new Error(`${peer.name} ${peer.version} did not install. Check the connection.`);
  }
  const measure = (count) => {
    for (const i of numbers(count)) {
      const { text, title } = texts[i % texts.length];
      writeFileSync(
        join(docs, `generated-${i}.md`),
        `---\ntitle: ${JSON.stringify(`${title}, text ${i}`)}\n---\n${plainText(text)}`,
      );
    }
    return timeBuild(folder);
  };
  return { ...peer, ...table(counts, measure) };
}

/** A lesson's words as plain Markdown: parts that compute go, words inside parts stay. */
const plainText = (text) =>
  text
    .replace(/<[A-Z][\w]*\b[^>]*\/>/g, '')
    .replace(/<\/?[A-Z][\w]*\b[^>]*>/g, '')
    .replace(/[{}]/g, '');

/**
 * One row a count. What a hundred lessons cost is reckoned from the build without any of them; the very first
 * build only warms the disk.
 */
function table(counts, measure) {
  measure(0);
  const empty = measure(0);
  const rows = counts
    .toSorted((a, b) => a - b)
    .map((lessons) => {
      const { pages, seconds, cpuSeconds } = measure(lessons);
      const per100 = (now, without) => hundredth(((now - without) * 100) / lessons);
      const row = {
        lessons,
        pages,
        seconds,
        cpuSeconds,
        secondsPer100: per100(seconds, empty.seconds),
        cpuSecondsPer100: per100(cpuSeconds, empty.cpuSeconds),
      };
      console.log(JSON.stringify(row));
      return row;
    });
  return { without: empty, rows };
}

const hundredth = (value) => Math.round(value * 100) / 100;
