/** DXF files read by programs of others. */
import { spawnSync } from 'node:child_process';
import DxfParser, { type IEntity, type ILineEntity, type IPolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { dxfFile } from '../../core/files/dxf-file';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { nearestOnPath } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { cutLine } from '../../core/seams/cut-line';
import { garmentOf, rectangle } from '../paper/pieces';
import { furthestApart, panel, written } from './files';

/** ezdxf, a reader of DXF by others, where Python has it. */
const python = ['/usr/bin/python3', 'python3'].find((each) => spawnSync(each, ['-c', 'import ezdxf']).status === 0);
if (!python) console.log('Skipped: python3-ezdxf is not installed, so DXF files cannot be read by another program.');

const FLATNESS = 0.05;

function fileOf(pieces: readonly Piece[], units: 'mm' | 'in' = 'mm'): string {
  return dxfFile(garmentOf(pieces), { ...written, units, size: 'Anna, March', flatness: FLATNESS }) ?? '';
}

function isPolyline(entity: IEntity): entity is IPolylineEntity {
  return entity.type === 'POLYLINE';
}
function isLine(entity: IEntity): entity is ILineEntity {
  return entity.type === 'LINE';
}
function isText(entity: IEntity): entity is ITextEntity {
  return entity.type === 'TEXT';
}

describe('dxfFile, read by others', () => {
  it('is read by dxf-parser as written: unit, layers, blocks, and every vertex of both lines', () => {
    const pieces = [panel(), rectangle(400, 0, 90, 60, { name: 'Gürtel' })];
    for (const [units, mm] of [
      ['mm', 1],
      ['in', 25.4],
    ] as const) {
      const read = new DxfParser().parseSync(fileOf(pieces, units));
      if (!read) throw new Error('nothing was read');
      expect(Object.keys(read.tables.layer.layers)).toEqual(
        expect.arrayContaining(['1', '2', '3', '4', '6', '7', '8', '13', '14', '15']),
      );
      expect(Object.keys(read.blocks)).toEqual(['SIDE_GORE_1', 'GURTEL_2']);
      expect(read.entities.filter(({ type }) => type === 'INSERT')).toHaveLength(2);
      const said = read.entities.filter(isText).map(({ text }) => text);
      expect(said).toContain(`UNITS: ${units === 'mm' ? 'METRIC' : 'ENGLISH'}`);
      const entities = read.blocks.SIDE_GORE_1?.entities ?? [];
      const verticesOn = (layer: string) =>
        entities
          .filter(isPolyline)
          .filter((each) => each.layer === layer)
          .flatMap(({ vertices }) => vertices);
      const off = (path: Path, { x, y }: { x: number; y: number }) =>
        nearestOnPath(path, { x: x * mm, y: -y * mm }).distance;
      const cut = cutLine(panel());
      if (cut.kind !== 'cut-line') throw new Error(cut.kind);
      for (const [layer, path] of [
        ['1', cut.whole],
        ['14', outlineOf(panel()).whole],
      ] as const) {
        const vertices = verticesOn(layer);
        expect(Math.max(...vertices.map((vertex) => off(path, vertex)))).toBeLessThan(1e-4);
        const corners = vertices.map(({ x, y }) => ({ x: x * mm, y: -y * mm }));
        const sides = corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length] as Point));
        expect(furthestApart(path, sides)).toBeLessThan(FLATNESS);
      }
      const grain = entities.filter(isLine).find(({ layer }) => layer === '7');
      expect(grain?.vertices.map(({ x, y }) => [x * mm, -y * mm])).toEqual([
        [expect.closeTo(77, 4), expect.closeTo(178, 4)],
        [expect.closeTo(77, 4), expect.closeTo(559, 4)],
      ]);
    }
  });

  it.skipIf(!python)('is read by ezdxf without an error, with the same layers', () => {
    const script = [
      'import ezdxf, sys, io, json',
      'd = ezdxf.read(io.StringIO(sys.stdin.read().replace("\\r\\n", "\\n")))',
      'a = d.audit()',
      'b = d.blocks.get("SIDE_GORE_1")',
      'p = [e for e in b if e.dxftype() == "POLYLINE" and e.dxf.layer == "14"][0]',
      'xs = [v.dxf.location.x for v in p.vertices]',
      'print(json.dumps([len(a.errors), d.dxfversion, sorted({e.dxf.layer for e in b}), p.is_closed, min(xs), max(xs)]))',
    ].join('\n');
    const run = spawnSync(python as string, ['-c', script], { input: fileOf([panel()]), encoding: 'utf8' });
    const layers = ['1', '13', '14', '2', '3', '4', '6', '7', '8'];
    expect(JSON.parse(run.stdout)).toEqual([0, 'AC1009', layers, true, 3, expect.closeTo(371, 3)]);
  });
});
