/** The elements of an SVG file as groups of lines with names and meanings. */
import { type Affine, composeAffine, IDENTITY, transformPath } from '../geometry/affine';
import type { Path } from '../geometry/segment';
import type { DrawnGroup, DrawnLine } from './drawn-line';
import { type LineMeaning, meaningOfName } from './file-layers';
import { readTransform } from './svg-units';

/** An element that is or was open while the file is gone through. */
export interface Frame {
  readonly element: string;
  readonly parent: Frame | undefined;
  readonly id: string;
  /** The name that some drawing programs keep in an attribute of their own. */
  readonly label: string;
  /** From the content of its title element, which comes after it. */
  title: string;
  /** From its own units to those of the whole drawing; `undefined` where a transform is not well formed. */
  readonly map: Affine | undefined;
  isHidden: boolean;
}

/** A line with the element that drew it, in the units of the whole drawing. */
export interface Drawn {
  readonly frame: Frame;
  readonly path: Path;
}

/** Elements whose content is not drawn where it stands. */
const NOT_DRAWN = new Set(['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'metadata', 'style', 'text']);

/** Names that programs give by themselves say nothing. */
const GIVEN_NAME = /^(path|rect|g|svg|layer|group|polygon|polyline|line|circle|ellipse|piece)?[-_ ]?\d*$/i;

/** An element just begun inside another. */
export function openFrame(element: string, attributes: ReadonlyMap<string, string>, parent: Frame | undefined): Frame {
  const own = parent ? readTransform(attributes.get('transform') ?? '') : IDENTITY;
  const map = own && parent?.map ? composeAffine(parent.map, own) : own;
  const label = [...attributes].find(([key]) => key.endsWith(':label'))?.[1] ?? '';
  const isOff =
    attributes.get('display')?.trim() === 'none' || /display\s*:\s*none/.test(attributes.get('style') ?? '');
  const isHidden = isOff || NOT_DRAWN.has(element) || (parent?.isHidden ?? false);
  return { element, parent, id: attributes.get('id') ?? '', label, title: '', map, isHidden };
}

/** Lines by the innermost group that is not a layer, in the order in which groups first draw; `map` leads to millimetres. */
export function groupsOfDrawn(drawn: readonly Drawn[], map: Affine): DrawnGroup[] {
  const groups = new Map<Frame, DrawnLine[]>();
  for (const { frame, path } of drawn) {
    const group = groupOf(frame);
    const line: DrawnLine = {
      path: transformPath(map, path),
      meaning: meaningOf(frame),
      layer: layerOf(frame.parent),
      name: meaningOfFrame(frame) === undefined ? nameOf(frame) : '',
    };
    const lines = groups.get(group);
    if (lines) lines.push(line);
    else groups.set(group, [line]);
  }
  return [...groups].map(([frame, lines]) => ({ name: groupName(frame), lines, points: [], turns: [], bends: [] }));
}

function groupOf(frame: Frame): Frame {
  let group = frame.parent ?? frame;
  while (group.parent && (group.element !== 'g' || meaningOfFrame(group) !== undefined)) group = group.parent;
  return group;
}

function meaningOf(frame: Frame): LineMeaning {
  for (let at: Frame | undefined = frame; at?.parent; at = at.parent) {
    const meaning = meaningOfFrame(at);
    if (meaning) return meaning;
  }
  return 'unsaid';
}

function meaningOfFrame({ id, label, title }: Frame): LineMeaning | undefined {
  return meaningOfName(id) ?? meaningOfName(label) ?? meaningOfName(title);
}

/** What a person called it: its title or label, else an id that is more than a number. */
function nameOf({ id, label, title }: Frame): string {
  return title.trim() || label.trim() || (GIVEN_NAME.test(id) ? '' : id);
}

function layerOf(frame: Frame | undefined): string {
  for (let at = frame; at?.parent; at = at.parent) if (nameOf(at) !== '') return nameOf(at);
  return '';
}

function groupName(frame: Frame): string {
  for (let at: Frame | undefined = frame; at?.parent; at = at.parent) {
    if (meaningOfFrame(at) === undefined && nameOf(at) !== '') return nameOf(at);
  }
  return '';
}
