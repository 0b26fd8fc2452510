import { rm } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * A file of `bench/` bundled and minified as the app is, and loaded. Unbundled, each call into another file goes by way of
 * the server this runs in, which costs a search a third of its pace.
 */
export async function bundled<Module>(name: string): Promise<Module> {
  return withBundle(name, (file) => import(/* @vite-ignore */ `${pathToFileURL(file).href}?${process.pid}`));
}

/** Lets `use` work with such a bundle as a file, which is taken away again. */
export async function withBundle<T>(name: string, use: (file: string) => T | Promise<T>): Promise<T> {
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
    return await use(`${outDir}/${name}.js`);
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}
