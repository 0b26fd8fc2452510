// npm run bench -- <group> [--json]: measured figures of one group, as a table or as one JSON object.
import type { Figure } from './figure';

const groups: Readonly<Record<string, () => Promise<readonly Figure[]>>> = {
  geometry: async () => (await import('./geometry')).geometryFigures(),
  drag: async () => [
    ...(await (await import('./drag')).dragFigures()),
    ...(await (await import('./drag-screen')).dragScreenFigures()),
  ],
  ink: async () => (await import('./ink')).inkFigures(),
  lay: async () => (await import('./lay')).layFigures(process.argv),
  'lay-touch': async () => (await import('./lay-touch')).layTouchFigures(),
  photo: async () => (await import('./photo')).photoFigures(process.argv),
  pages: async () => (await import('./pages')).pagesFigures(),
  versions: async () => (await import('./versions')).versionsFigures(),
  start: async () => (await import('./start')).startFigures(),
};

export async function main(args: readonly string[]): Promise<number> {
  const group = args.find((arg) => !arg.startsWith('--'));
  const measure = group === undefined ? undefined : groups[group];
  if (!measure) {
    console.error(`Say which figures to measure: ${Object.keys(groups).join(', ')}.`);
    return 1;
  }
  const figures = await measure();
  if (args.includes('--json')) {
    console.log(JSON.stringify({ group, figures }));
    return 0;
  }
  for (const { name, value, unit, baseline, ratio } of figures) {
    const beside = baseline === undefined ? '' : `   baseline ${round(baseline)} ${unit}`;
    console.log(
      `${name.padEnd(28)} ${round(value)} ${unit}${beside}${ratio === undefined ? '' : `   ratio ${round(ratio)}`}`,
    );
  }
  return 0;
}

function round(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toPrecision(4);
}
