/**
 * The outlines of an SVG file as pieces. Shapes, groups and transforms are read; nothing is run, fetched or drawn. Not
 * read, and told: uses of symbols, pictures, drawings within the drawing, transforms in styles. Style sheets and
 * `visibility` have no say.
 *
 * See: W3C, Scalable Vector Graphics (SVG) 2.
 */
import { IDENTITY, scaling, transformPath } from '../geometry/affine';
import { unionBox } from '../geometry/bounds';
import { pathBounds } from '../geometry/path';
import { type FileFinding, type FileReading, type FileRefusal, LARGEST_FILE, MOST_POINTS } from './file-reading';
import { piecesFromGroups } from './pieces-from-groups';
import { type Drawn, type Frame, groupsOfDrawn, openFrame } from './svg-groups';
import { unsafeElement, unsafeStyle } from './svg-safety';
import { SVG_SHAPES, shapeRuns } from './svg-shapes';
import { type FileUnit, mapToMm, mmPerUnit } from './svg-units';
import { type XmlEvent, xmlEvents } from './xml-reader';

export interface ReadSvgOptions {
  readonly newId: () => string;
  /** What one unit of the drawing is, as she says; it goes before what the file says. */
  readonly unit?: FileUnit;
}

/** How closely edges follow the lines of the file, in mm. */
const FOLLOWED_WITHIN = 0.01;

/** Elements that may hold outlines but are not read. */
const NOT_READ = new Set(['use', 'image', 'svg', 'foreignObject']);

/**
 * Pieces from the text of an SVG file, each edge within 0.01 mm of the file's line where nothing is
 * found to the contrary. A closed line is an outline; layers called cut, stitch, grain, notches or fold are taken at
 * their word. A question when the file does not say how long its unit is, and a refusal for a file that is broken,
 * too large or not to be trusted.
 */
export function readSvg(text: string, { newId, unit }: ReadSvgOptions): FileReading {
  if (text.length > LARGEST_FILE) return { kind: 'too-large', limit: LARGEST_FILE };
  if (!/<(\w+:)?svg\b/.test(text)) return { kind: 'not-this-kind' };
  const walk = new Walk();
  const refusal = walk.through(text);
  if (refusal) return refusal;
  const map = unit ? scaling(mmPerUnit[unit], mmPerUnit[unit]) : mapToMm(walk.root);
  const groups = groupsOfDrawn(walk.drawn, map ?? IDENTITY);
  const [first, ...others] = groups.flatMap(({ lines }) => lines.map(({ path }) => pathBounds(path)));
  if (!map && first) {
    const whole = others.reduce(unionBox, first);
    return { kind: 'units-not-known', across: whole.maxX - whole.minX, down: whole.maxY - whole.minY };
  }
  const made = piecesFromGroups(groups, { newId, followWithin: FOLLOWED_WITHIN, smoothWithin: FOLLOWED_WITHIN });
  return made.kind === 'read' ? { ...made, findings: [...walk.findings(), ...made.findings] } : made;
}

/** Goes through the elements once, with a frame for each that is open, and collects what they draw. */
class Walk {
  root: ReadonlyMap<string, string> = new Map();
  readonly drawn: Drawn[] = [];
  private frame: Frame | undefined;
  private points = 0;
  private readonly broken: Frame[] = [];
  private readonly notRead = new Map<string, number>();

  /** Why it stopped; nothing when it came through. */
  through(text: string): FileRefusal | undefined {
    const events = xmlEvents(text);
    for (;;) {
      const next = events.next();
      if (next.done) return next.value;
      const refusal = this.take(next.value);
      if (refusal) return refusal;
    }
  }

  findings(): FileFinding[] {
    return [
      ...[...this.notRead].map(([what, count]): FileFinding => ({ kind: 'not-read', what, count })),
      ...this.broken.map(({ title, id }): FileFinding => ({ kind: 'broken-line', name: title || id })),
    ];
  }

  private take(event: XmlEvent): FileRefusal | undefined {
    switch (event.kind) {
      case 'instruction':
        return event.name === 'xml-stylesheet' ? { kind: 'outside-link', link: event.name } : undefined;
      case 'text':
        if (this.frame?.element === 'title' && this.frame.parent) this.frame.parent.title += event.text;
        return this.frame?.element === 'style' ? unsafeStyle(event.text, 'sheet') : undefined;
      case 'end':
        this.frame = this.frame?.parent;
        return undefined;
      case 'start':
        return this.open(event.name.slice(event.name.indexOf(':') + 1), event.attributes);
    }
  }

  private open(element: string, attributes: ReadonlyMap<string, string>): FileRefusal | undefined {
    const unsafe = unsafeElement(element, attributes);
    if (unsafe) return unsafe;
    const isRoot = this.frame === undefined;
    if (isRoot && element !== 'svg') return { kind: 'not-this-kind' };
    const frame = openFrame(element, attributes, this.frame);
    this.frame = frame;
    if (isRoot) this.root = attributes;
    if (isRoot || frame.isHidden) return undefined;
    if (NOT_READ.has(element)) this.leaveOut(frame, element);
    else if (!frame.map || /transform\s*:/.test(attributes.get('style') ?? '')) this.leaveOut(frame, 'transform');
    else if (SVG_SHAPES.has(element)) return this.draw(frame, frame.map, attributes);
    return undefined;
  }

  private leaveOut(frame: Frame, what: string): void {
    frame.isHidden = true;
    this.notRead.set(what, (this.notRead.get(what) ?? 0) + 1);
  }

  private draw(
    frame: Frame,
    map: NonNullable<Frame['map']>,
    attributes: ReadonlyMap<string, string>,
  ): FileRefusal | undefined {
    const { runs, isBroken } = shapeRuns(frame.element, attributes);
    if (isBroken) this.broken.push(frame);
    for (const path of runs) {
      this.points += path.length;
      if (this.points > MOST_POINTS) return { kind: 'too-many', what: 'points', limit: MOST_POINTS };
      this.drawn.push({ frame, path: transformPath(map, path) });
    }
    return undefined;
  }
}
