import type { Random } from '../../core/cloth/place-search';
import { seededRandom } from '../../core/cloth/seeded-random';
import type { Grey } from '../../core/picture/grey';
import { FLAT, type SeenPage, seenPage, type View } from './photo-view';
import { gorePage, type PrintedPage, pageTexture } from './printed-page';
import { blur, jpegBlocks, noise } from './spoiled';

/** Everything that is chosen for one photo. */
export interface PhotoSettings {
  readonly name: string;
  readonly seed: number;
  readonly view: View;
  readonly page: PrintedPage;
  /** How light the table under the page is. */
  readonly table: number;
  /** How much of the light a shadow takes, 0 to 1. */
  readonly shadow: number;
  readonly blurPx: number;
  readonly noise: number;
  readonly jpegQuality: number;
}

export interface GeneratedPhoto extends PhotoSettings {
  readonly grey: Grey;
  readonly seen: SeenPage;
}

/** A photo of a printed page of our own, the same for the same settings. */
export function generatedPhoto(settings: PhotoSettings): GeneratedPhoto {
  const { view, page } = settings;
  const { width, height } = view;
  const random = seededRandom(settings.seed);
  const seen = seenPage(page.across, page.down, view);
  const texture = pageTexture(page);
  const light = lightOver(settings, random);
  const grain = tableOver(settings.table, random);
  const data = new Float32Array(width * height);
  const at = { u: 0, v: 0, slope: 0 };
  // How many pixels a mm is about, for soft edges of the page.
  const [a, b] = [seen.toPhoto({ x: 0, y: 0 }), seen.toPhoto({ x: page.across, y: page.down })];
  const pxPerMm = Math.hypot(b.x - a.x, b.y - a.y) / Math.hypot(page.across, page.down);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      seen.toPage(x + 0.5, y + 0.5, at);
      const { u, v } = at;
      const within = Math.min(u, page.across - u, v, page.down - v) * pxPerMm;
      const cover = Math.min(Math.max(0.5 + within, 0), 1);
      const under = cover < 1 ? grain(x, y) * (within > -14 ? 0.8 + 0.2 * (-within / 14) : 1) : 0;
      const paper = cover > 0 ? texture(u, v) * (1 - 0.35 * Math.sin(at.slope)) : 0;
      data[y * width + x] = (cover * paper + (1 - cover) * under) * light(x / width, y / height);
    }
  }
  blur(data, width, height, settings.blurPx);
  noise(data, settings.noise, random);
  for (let i = 0; i < data.length; i++) data[i] = Math.min(Math.max(data[i] as number, 0), 1);
  jpegBlocks(data, width, height, settings.jpegQuality);
  for (let i = 0; i < data.length; i++) {
    data[i] = Math.round(Math.min(Math.max(data[i] as number, 0), 1) * 255) / 255;
  }
  return { ...settings, grey: { width, height, data }, seen };
}

/** A lamp to one side, and the soft edge of a shadow that falls across the page. */
function lightOver({ shadow }: PhotoSettings, random: Random): (x: number, y: number) => number {
  const way = random() * 2 * Math.PI;
  const lamp = 0.1 + 0.15 * random();
  const across = random() * 2 * Math.PI;
  const [cos, sin] = [Math.cos(across), Math.sin(across)];
  const where = (random() - 0.5) * 0.5;
  const soft = 0.02 + 0.1 * random();
  return (x, y) => {
    const even = 1 - lamp * (0.5 + (x - 0.5) * Math.cos(way) + (y - 0.5) * Math.sin(way));
    const deep = 1 / (1 + Math.exp(-((x - 0.5) * cos + (y - 0.5) * sin - where) / soft));
    return even * (1 - shadow * deep);
  };
}

/** A table top with grain: two waves that run nearly one way. */
function tableOver(level: number, random: Random): (x: number, y: number) => number {
  const way = random() * Math.PI;
  const [cos, sin] = [Math.cos(way), Math.sin(way)];
  const [one, two] = [0.03 + 0.05 * random(), 0.15 + 0.2 * random()];
  return (x, y) => {
    const along = x * cos + y * sin;
    const wave = Math.sin(along * one + 1.5 * Math.sin((x * sin - y * cos) * 0.004)) + 0.5 * Math.sin(along * two);
    return level * (1 + 0.07 * wave);
  };
}

/** How many photos the measured set has. */
export const SET_SIZE = 64;

/** The settings of one photo of the set: every fourth flat and plain, the others worse in turn. */
export function settingsOf(index: number, size: { readonly width: number; readonly height: number }): PhotoSettings {
  const random = seededRandom(1000 + index * 7);
  const between = (least: number, most: number) => least + (most - least) * random();
  const kind = (['frame', 'page', 'squares', 'frame'] as const)[index % 4] as 'frame' | 'page' | 'squares';
  const isCurled = Math.floor(index / 4) % 2 === 1;
  const tiltMost = 5 + (20 * (index % 16)) / 15;
  const way = random() * 2 * Math.PI;
  const page = gorePage({
    frame: kind !== 'page',
    ...(kind === 'squares' ? { squares: index % 8 === 2 ? 10 : 8 } : {}),
    ...(index % 5 === 3 ? { turn: 1 } : {}),
  });
  const isWide = page.across > page.down;
  const [long, short] = [Math.max(size.width, size.height), Math.min(size.width, size.height)];
  const curl = isCurled
    ? {
        rulings: random() < 0.75 ? ('down' as const) : ('across' as const),
        rises: between(0.1, 0.55),
        falls: between(0.02, 0.18),
      }
    : FLAT;
  return {
    name: `${String(index).padStart(2, '0')}-${kind}${isCurled ? '-curled' : ''}`,
    seed: index + 1,
    view: {
      width: isWide ? long : short,
      height: isWide ? short : long,
      focalPx: long * between(0.72, 0.95),
      tilt: [tiltMost * Math.cos(way), tiltMost * Math.sin(way), between(-12, 12)],
      share: between(0.72, 0.94),
      curl,
    },
    page,
    table: index % 6 === 5 ? between(0.6, 0.68) : between(0.15, 0.5),
    shadow: index % 3 === 0 ? 0 : between(0.15, 0.5),
    blurPx: between(0.4, 1.4),
    noise: between(0.004, 0.03),
    jpegQuality: Math.round(between(55, 92)),
  };
}
