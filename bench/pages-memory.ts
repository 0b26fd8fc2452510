import { execFileSync } from 'node:child_process';
import { withBundle } from './bundled';
import type { Figure } from './figure';
import { quantile } from './timing';

const ROUNDS = 5;

/**
 * The most memory a process ever holds that makes 60 pages, and what of it is for them: beside one that makes the pages of
 * one gore with the same program and fonts.
 */
export function pagesMemoryFigures(): Promise<Figure[]> {
  return withBundle('pages-memory.run', (file) => {
    const made = (gores: number) => {
      const runs = Array.from({ length: ROUNDS }, () => {
        const said = execFileSync(process.execPath, [file, String(gores)], { encoding: 'utf8' });
        return JSON.parse(said) as { readonly pages: number; readonly mostKb: number };
      });
      return {
        pages: runs[0]?.pages ?? 0,
        mb: quantile(
          runs.map(({ mostKb }) => mostKb / 1024),
          0.5,
        ),
      };
    };
    const [all, one] = [made(10), made(1)];
    return [
      { name: 'pages_60_process_mb', value: all.mb, unit: 'MB', baseline: one.mb },
      { name: 'pages_more_process_mb', value: ((all.mb - one.mb) / (all.pages - one.pages)) * 60, unit: 'MB' },
    ];
  });
}
