import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** A package that is part of what is served. */
export interface Licensed {
  readonly name: string;
  readonly version: string;
  /** As an SPDX expression. */
  readonly licence: string;
  /** The licence itself, word for word; empty where the package brings none. */
  readonly text: string;
}

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
}

/** Needed only to build, but parts of these are in what is served. */
const SERVED_TOO = /^node_modules\/(workbox-(core|precaching|routing|strategies|window)|vite-plugin-pwa|vite)$/;

/** Read by the compiler alone. */
const ONLY_TYPES = /\/(@types\/[^/]+|csstype)$/;

const LICENCE_FILE = /^(licen[cs]e|copying|notice)/i;

/** What the PDF reader brings along has licences of its own, beside the decoders and the fonts. */
const FOLDERS = ['.', 'wasm', 'standard_fonts'];

/** Every package that is served, by the lock file, with its licence as it lies in the installed package. */
export function licences(root: string): readonly Licensed[] {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    readonly packages: Readonly<Record<string, Locked>>;
  };
  const packages = Object.entries(lock.packages)
    .filter(([path, { dev, optional }]) => (path !== '' && !dev && !optional) || SERVED_TOO.test(path))
    .filter(([path]) => !ONLY_TYPES.test(path))
    .map(([path, { version = '', license = '' }]) => ({
      name: path.replace(/^.*node_modules\//, ''),
      version,
      licence: license,
      text: textIn(join(root, path)),
    }));
  const fonts = {
    name: 'DejaVu fonts',
    version: '2.37',
    licence: 'Bitstream-Vera AND public domain',
    text: readFileSync(join(root, 'public/fonts/LICENCE-dejavu.txt'), 'utf8').trim(),
  };
  return [...packages, fonts].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function textIn(folder: string): string {
  const texts = FOLDERS.map((inner) => join(folder, inner))
    .filter((path) => existsSync(path))
    .flatMap((path) =>
      readdirSync(path)
        .filter((name) => LICENCE_FILE.test(name))
        .map((name) => readFileSync(join(path, name), 'utf8').trim()),
    );
  return texts.join('\n\n');
}

/** Writes `licences.json` beside the page, which shows it. A package without a licence stops the build. */
export function licencesFile(root: string): Plugin {
  return {
    name: 'licences-file',
    generateBundle() {
      const all = licences(root);
      const without = all.filter(({ licence }) => licence === '');
      if (without.length > 0) this.error(`no licence: ${without.map(({ name }) => name).join(', ')}`);
      this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(all) });
    },
  };
}
