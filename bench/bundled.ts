import { rm } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * A file of `bench/` bundled and minified as the app is, and loaded. Unbundled, each call into another file goes by way of
 * the server this runs in, which costs a search a third of its pace.
 */
export async function bundled<Module>(name: string): Promise<Module> {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const outDir = `${root}node_modules/.cache/bench-${name}`;
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: { ssr: `bench/${name}.ts`, outDir, emptyOutDir: true, minify: true, target: 'es2022' },
  });
  try {
    return await import(/* @vite-ignore */ `${pathToFileURL(`${outDir}/${name}.js`).href}?${process.pid}`);
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}
