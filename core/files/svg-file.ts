/**
 * A garment's pieces as an SVG file in real units: one user unit is a millimetre, as the width and height in mm say.
 *
 * See: W3C, Scalable Vector Graphics (SVG) 2, chapters 8 (coordinates) and 9 (paths). Letters are shown in whatever
 * sans serif the reader's machine has, so that any script finds its signs.
 */
import type { Mark, Stroke, Words } from '../drawing/drawing';
import { lineStyles } from '../drawing/line-styles';
import { pieceBounds } from '../drawing/piece-bounds';
import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { versionMark } from '../garment/version-mark';
import { type Box, growBox, unionBox } from '../geometry/bounds';
import { isClosed } from '../geometry/path';
import { isSamePoint } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { FILE_LAYERS, type FileLayer, layerOfLine } from './file-layers';
import type { FileWords } from './file-words';
import { xmlText } from './xml-text';

export interface SvgFileOptions {
  readonly words: FileWords;
  /** YYYY-MM-DD */
  readonly date: string;
}

/** Left clear round the drawing, in mm. */
const CLEAR = 10;

/** Half of a line's width in letters is at most about this share of their height each; for room, not for looks. */
const HALF_LETTER = 0.35;

/** The base line of letters lies this share of their size below their middle. */
const DROP = 0.36;

/**
 * The pieces of a garment, all but guides, where they lie on the table; `undefined` when there are none. Each is a group
 * with a title, and in it a group for each layer. Coordinates are within 0.0001 mm; curves stay cubics.
 */
export function svgFile(garment: Garment, { words, date }: SvgFileOptions): string | undefined {
  const pieces = garment.pieces.filter(({ use }) => use !== 'guide');
  if (pieces.length === 0) return undefined;
  const box = growBox(pieces.map((piece) => inkBounds(piece, words)).reduce(unionBox), CLEAR);
  const [x, y] = [Math.floor(box.minX), Math.floor(box.minY)];
  const [width, height] = [box.maxX - x, box.maxY - y].map(wholePixels).map(svgNumber);
  const name = garment.name === '' ? words.unnamedGarment : garment.name;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${x} ${y} ${width} ${height}" fill="none" stroke="#000" stroke-linecap="round" stroke-linejoin="round">`,
    title(name),
    `<desc>${xmlText(words.garmentLine(name, date, versionMark(garment)))}</desc>`,
    ...pieces.flatMap((piece, index) => pieceGroup(piece, `piece-${index + 1}`, words)),
    '</svg>',
    '',
  ].join('\n');
}

/** Browsers round a drawing's size to whole pixels of 1/96 in and stretch it to fit: so the size is whole pixels. */
function wholePixels(mm: number): number {
  return (Math.ceil((mm * 96) / 25.4) * 25.4) / 96;
}

function pieceGroup(piece: Piece, id: string, words: FileWords): string[] {
  const marks = pieceDrawing(piece);
  const groups = FILE_LAYERS.flatMap((layer) => {
    const lines =
      layer === 'outline'
        ? [`<path d="${pathData(outlineOf(piece).whole)}"/>`]
        : marks.filter((mark) => fileLayerOf(mark, piece) === layer).map((mark) => markElement(mark, words));
    if (lines.length === 0) return [];
    const look = layer === 'outline' ? ' fill="#fff" stroke="none"' : '';
    return [`<g id="${id}-${layer}"${look}>`, title(words.layer(layer)), ...lines, '</g>'];
  });
  return [`<g id="${id}">`, title(piece.name === '' ? words.unnamedPiece : piece.name), ...groups, '</g>'];
}

/** The layer of a mark. A fold's bracket is drawn like a grain line but belongs to the fold. */
function fileLayerOf(mark: Mark, { grain }: Piece): FileLayer {
  if (mark.kind === 'words') return 'words';
  if (mark.line !== 'grain') return layerOfLine[mark.line];
  const ends = mark.path.flatMap(({ p0, p1 }) => [p0, p1]);
  const isGrain = grain && ends.some((end) => isSamePoint(end, grain.from) || isSamePoint(end, grain.to));
  return isGrain ? 'grain' : 'fold';
}

function markElement(mark: Mark, words: FileWords): string {
  return mark.kind === 'stroke' ? strokeElement(mark) : wordsElement(mark, words);
}

function strokeElement({ line, path }: Stroke): string {
  const { width, dash } = lineStyles[line];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return `<path stroke-width="${width}"${dashes} d="${pathData(path)}"/>`;
}

function wordsElement({ at, size, angle, weight, content }: Words, words: FileWords): string {
  const [x, y] = [at.x - DROP * size * Math.sin(angle), at.y + DROP * size * Math.cos(angle)].map(svgNumber);
  const turned = angle === 0 ? '' : ` transform="rotate(${svgNumber((angle * 180) / Math.PI)} ${x} ${y})"`;
  const bold = weight === 'bold' ? ' font-weight="bold"' : '';
  return `<text x="${x}" y="${y}" font-family="sans-serif" font-size="${svgNumber(size)}"${bold} text-anchor="middle" fill="#000" stroke="none"${turned}>${xmlText(words.content(content))}</text>`;
}

function title(text: string): string {
  return `<title>${xmlText(text)}</title>`;
}

/** A path as the `d` of a path element, closed with Z where it closes. */
function pathData(path: Path): string {
  const first = path[0];
  if (!first) return '';
  const parts = [`M${pair(first.p0)}`];
  for (const segment of path) {
    if (segment.kind === 'line') parts.push(`L${pair(segment.p1)}`);
    else parts.push(`C${pair(segment.p1)} ${pair(segment.p2)} ${pair(segment.p3)}`);
  }
  return isClosed(path) ? `${parts.join('')}Z` : parts.join('');
}

function pair({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${svgNumber(x)},${svgNumber(y)}`;
}

/** A number to four places, without an exponent or needless noughts. */
function svgNumber(value: number): string {
  const text = value.toFixed(4).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** The box of the drawing with room for its words, whatever the language. */
function inkBounds(piece: Piece, words: FileWords): Box {
  return pieceDrawing(piece)
    .filter((mark) => mark.kind === 'words')
    .map(({ at, size, content }) => {
      const reach = size * Math.max(1, words.content(content).length * HALF_LETTER);
      return { minX: at.x - reach, maxX: at.x + reach, minY: at.y - reach, maxY: at.y + reach };
    })
    .reduce(unionBox, pieceBounds(piece));
}
