import type { Plugin } from 'vite';

/** The bundler's preload helper in a file of its own, and a line that asks for it. */
const helperFile = /(?:^|\/)fetch\.[\w-]+\.js$/;
const helperImport = /import\s*\{\s*(?:\w+ as )?([\w$]+)\s*\}\s*from\s*["']\.\/fetch\.[\w-]+\.js["'];?/;

/**
 * The calls of that helper: around a bare import(), or around one that picks what is used of it, out of a file
 * that holds more.
 */
const callsOf = (helper: string): RegExp =>
  new RegExp(
    String.raw`(?<![\w$.])${helper.replaceAll('$', String.raw`\$`)}\((?:\(\)=>|async\(\)=>\{let\{[\w$:,]+\}=await )(import\([^()]*\)(?:\.then\(\w+=>\w+\.\w+\))?)(?:;return\{[\w$:,]+\}\})?,\[\]\)`,
    'g',
  );

/** A script without its line that asks for the helper, and with a plain import() where the helper was called. */
function withoutHelper(file: string, code: string): string {
  const [line, helper] = helperImport.exec(code) ?? [];
  if (line === undefined || helper === undefined) return code;
  const plain = code.replace(line, () => '').replace(callsOf(helper), '$1');
  // A call of another shape would ask for what is no longer there.
  if (
    new RegExp(String.raw`(?<![\w$.])${helper.replaceAll('$', String.raw`\$`)}\((?:async)?\(\)=>`).test(plain)
  )
    throw new Error(`${file}: the bundler calls its preload helper in a way that is not known here.`);
  return plain;
}

/**
 * Parts fetched on demand here never bring style sheets of their own, so the bundler's preload helper (1 kB
 * on every page) and its lists of what to fetch beside each part have nothing to do: a plain import() is
 * enough. What is left of the helper would cost every page a request, so its calls go, too.
 */
export function plainImports(): Plugin {
  return {
    name: 'plain-imports',
    enforce: 'post',
    configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
    load: {
      order: 'pre',
      handler: (id) =>
        id.includes('vite/preload-helper') ? 'export const __vitePreload = (load) => load();' : null,
    },
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        for (const [file, part] of Object.entries(bundle)) {
          if (helperFile.test(file)) delete bundle[file];
          else if (part.type === 'chunk') {
            part.code = withoutHelper(file, part.code);
            part.imports = part.imports.filter((name) => !helperFile.test(name));
          }
        }
      },
    },
  };
}
