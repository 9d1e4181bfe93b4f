// Joins src before the unit tests run: a runner that loads module by module makes a season five times slower.
import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build, type Plugin, type PluginOption } from 'vite';

const ENGINE =
  /[\\/]src[\\/](?:(?:numerics|model|season|lessons)[\\/]|catalogue[\\/](?:[^\\/]+|[^\\/]+[\\/][^\\/]+[\\/](?:kind|science|constants))\.ts$)/;
/** Two folders deep, as its sources are: they read lessons and examples by address from there. */
const PLACE = join('node_modules', '.joined');

/** `season/plan.ts` as `season.plan`: all in one folder. */
const nameOf = (path: string): string =>
  path
    .replace(/\.tsx?$/, '')
    .split(sep)
    .join('.');

/** The modules of src by their paths, each under the name of its joined file. */
function modulesOf(src: string): Record<string, string> {
  const code = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((path) => /\.tsx?$/.test(path) && path !== 'main.tsx');
  return Object.fromEntries(code.map((path) => [nameOf(path), join(src, path)]));
}

/**
 * What a test imports from src comes from a build of it, in which the engine is one file that Node loads by itself.
 * Off while watching, where a change must show at once.
 */
export function joinSources(root: string, plugins: PluginOption[]): Plugin {
  const src = join(root, 'src');
  const place = join(root, PLACE);
  let joined: Promise<unknown> | undefined;
  let on = true;
  const joinOnce = (): Promise<unknown> =>
    (joined ??= build({
      configFile: false,
      root,
      logLevel: 'error',
      publicDir: false,
      plugins,
      build: {
        ssr: true,
        outDir: place,
        emptyOutDir: true,
        minify: false,
        target: 'esnext',
        sourcemap: true,
        rolldownOptions: {
          input: modulesOf(src),
          output: {
            entryFileNames: '[name].mjs',
            chunkFileNames: '[name].mjs',
            codeSplitting: { groups: [{ name: 'engine', test: ENGINE }] },
          },
        },
      },
    }));
  return {
    name: 'join-sources',
    enforce: 'pre',
    apply: () => process.env['VITEST'] === 'true',
    configResolved(config) {
      on = !(config as { test?: { watch?: boolean } }).test?.watch;
    },
    async resolveId(source, importer, options) {
      if (!on || importer === undefined) return null;
      const file = await this.resolve(source, importer, { ...options, skipSelf: true });
      if (file === null || !file.id.startsWith(src + sep) || !/\.tsx?$/.test(file.id)) return null;
      await joinOnce();
      return join(place, `${nameOf(relative(src, file.id))}.mjs`);
    },
  };
}
