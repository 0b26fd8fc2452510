import type { Said } from '../said';
import * as help from './guide/help';
import * as next from './guide/next';

/** Every file of words, by its name. */
export interface Catalogue {
  readonly blocks: Said<typeof import('../en/blocks')>;
  readonly 'by-points': Said<typeof import('../en/by-points')>;
  readonly check: Said<typeof import('../en/check')>;
  readonly 'check-page': Said<typeof import('../en/check-page')>;
  readonly 'clean-up': Said<typeof import('../en/clean-up')>;
  readonly cloth: Said<typeof import('../en/cloth')>;
  readonly 'cloth-names': Said<typeof import('../en/cloth-names')>;
  readonly compare: Said<typeof import('../en/compare')>;
  readonly demo: Said<typeof import('../en/demo')>;
  readonly diagram: Said<typeof import('../en/diagram')>;
  readonly draft: Said<typeof import('../en/draft')>;
  readonly files: Said<typeof import('../en/files')>;
  readonly findings: Said<typeof import('../en/findings')>;
  readonly fit: Said<typeof import('../en/fit')>;
  readonly glossary: Said<typeof import('../en/guide/glossary')>;
  readonly guide: Said<typeof import('../en/guide/guide')>;
  readonly help: Said<typeof import('../en/guide/help')>;
  readonly 'how-to': Said<typeof import('../en/guide/how-to')>;
  readonly next: Said<typeof import('../en/guide/next')>;
  readonly label: Said<typeof import('../en/label')>;
  readonly measures: Said<typeof import('../en/measures')>;
  readonly mockup: Said<typeof import('../en/mockup')>;
  readonly paper: Said<typeof import('../en/paper')>;
  readonly 'paper-sheet': Said<typeof import('../en/paper-sheet')>;
  readonly 'project-file': Said<typeof import('../en/project-file')>;
  readonly reshape: Said<typeof import('../en/reshape')>;
  readonly 'screen-paper': Said<typeof import('../en/screen-paper')>;
  readonly seams: Said<typeof import('../en/seams')>;
  readonly shelf: Said<typeof import('../en/shelf')>;
  readonly shell: Said<typeof import('../en/shell')>;
  readonly squares: Said<typeof import('../en/squares')>;
  readonly storage: Said<typeof import('../en/storage')>;
  readonly table: Said<typeof import('../en/table')>;
  readonly trial: Said<typeof import('../en/trial')>;
  readonly ui: Said<typeof import('../en/ui')>;
  readonly versions: Said<typeof import('../en/versions')>;
  readonly wearer: Said<typeof import('../en/wearer')>;
  readonly 'whole-shelf': Said<typeof import('../en/whole-shelf')>;
}

export const german: Partial<Record<keyof Catalogue, object>> = { help, next };
