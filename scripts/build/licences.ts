import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** A package that is part of what is served. */
export interface Licensed {
  readonly name: string;
  readonly version: string;
  /** As an SPDX expression. */
  readonly licence: string;
  /** The licence itself, word for word. */
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

/** What a licence wants beside what lies in the package: the LGPL the GPL it adds to, a part of others its own terms. */
const BESIDE: Readonly<Record<string, (root: string) => string>> = {
  'libheif-js': (root) => read(root, 'scripts/build/texts/gpl-3.0.txt'),
  brotli: (root) =>
    `The decoder: Copyright 2013 Google Inc., under the Apache Licence.\n\n${textIn(join(root, 'node_modules/@swc/helpers'))}`,
};

/** Every package that is served, by the lock file, with its licence as it lies in the installed package. */
export function licences(root: string): readonly Licensed[] {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    readonly packages: Readonly<Record<string, Locked>>;
  };
  const packages = Object.entries(lock.packages)
    .filter(([path, { dev, optional }]) => (path !== '' && !dev && !optional) || SERVED_TOO.test(path))
    .filter(([path]) => !ONLY_TYPES.test(path))
    .map(([path, { version = '', license = '' }]) => {
      const name = path.replace(/^.*node_modules\//, '');
      const own = textIn(join(root, path)) || (license === 'MIT' ? mitOf(root, path) : '');
      const texts = [own, BESIDE[name]?.(root) ?? ''].filter((text) => text !== '');
      return { name, version, licence: license, text: texts.join('\n\n') };
    });
  const fonts = {
    name: 'DejaVu fonts',
    version: '2.37',
    licence: 'Bitstream-Vera AND public domain',
    text: read(root, 'public/fonts/LICENCE-dejavu.txt'),
  };
  return [...packages, fonts].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function read(root: string, path: string): string {
  return readFileSync(join(root, path), 'utf8').trim();
}

/** The MIT licence of a package that names it and brings no text, in the name of its author. */
function mitOf(root: string, path: string): string {
  const { author } = JSON.parse(read(root, join(path, 'package.json'))) as { readonly author?: string };
  if (typeof author !== 'string') return '';
  return `Copyright (c) ${author.replace(/\s*<.*$/, '')}\n\n${read(root, 'scripts/build/texts/mit.txt')}`;
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

/** Writes `licences.json` beside the page, which shows it. A package without a licence and its text stops the build. */
export function licencesFile(root: string): Plugin {
  return {
    name: 'licences-file',
    generateBundle() {
      const all = licences(root);
      const without = all.filter(({ licence, text }) => licence === '' || text === '');
      if (without.length > 0) this.error(`no licence: ${without.map(({ name }) => name).join(', ')}`);
      this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(all) });
    },
  };
}
