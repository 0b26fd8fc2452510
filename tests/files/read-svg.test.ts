import { describe, expect, it } from 'vitest';
import { readSvg } from '../../core/files/read-svg';
import { outlineOf } from '../../core/garment/outline';
import { pathBounds, pathLength, signedArea } from '../../core/geometry/path';
import { onlyPiece, piecesOf, reading } from './files';

function svg(content: string, size = 'width="200mm" height="100mm" viewBox="0 0 200 100"'): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${content}</svg>`;
}

function read(content: string, size?: string) {
  return readSvg(svg(content, size), reading);
}

describe('readSvg, what is drawn', () => {
  it('makes a piece of a polygon, corner for corner', () => {
    const piece = onlyPiece(read('<polygon points="10,20 70,20 70,60 10,45"/>'));
    expect(piece.corners.map(({ at }) => [at.x, at.y])).toEqual([
      [10, 20],
      [70, 20],
      [70, 60],
      [10, 45],
    ]);
    expect(piece.edges.every(({ shape }) => shape.kind === 'straight')).toBe(true);
    expect(piece.drawnAs).toBe('not-known');
  });

  // Closed forms: an ellipse has the area πab, a circle the girth 2πr.
  it('follows circles and ellipses within 0.01 mm', () => {
    const circle = outlineOf(onlyPiece(read('<circle cx="90" cy="50" r="40"/>'))).whole;
    expect(pathLength(circle)).toBeCloseTo(2 * Math.PI * 40, 1);
    const ellipse = outlineOf(onlyPiece(read('<ellipse cx="90" cy="50" rx="70" ry="30"/>'))).whole;
    expect(Math.abs(Math.abs(signedArea(ellipse)) - Math.PI * 70 * 30)).toBeLessThan(0.01 * 330);
  });

  it('keeps a rounded rectangle as four sides and four arcs, whose area is known', () => {
    const piece = onlyPiece(read('<rect x="10" y="20" width="120" height="60" rx="15"/>'));
    const area = 120 * 60 - (4 - Math.PI) * 15 * 15;
    expect(Math.abs(Math.abs(signedArea(outlineOf(piece).whole)) - area)).toBeLessThan(0.01 * 340);
  });

  it('takes nested transforms in order: turned a quarter, then moved, then doubled', () => {
    const turned =
      '<g transform="scale(2)"><g transform="translate(30 5)"><rect transform="rotate(90)" width="20" height="7"/></g></g>';
    expect(pathBounds(outlineOf(onlyPiece(read(turned))).whole)).toEqual({
      minX: expect.closeTo(46, 9),
      maxX: expect.closeTo(60, 9),
      minY: expect.closeTo(10, 9),
      maxY: expect.closeTo(50, 9),
    });
  });

  it('joins open lines that meet, and tells of one that does not close', () => {
    const lines = '<path d="M10,10H80"/><path d="M80 50V10"/><path d="M80,50 10,10.01"/>';
    expect(onlyPiece(read(`<g>${lines}</g>`)).corners).toHaveLength(3);
    const open = read('<path id="yoke" d="M10,10H80V50"/>');
    expect(open).toMatchObject({ kind: 'read', pieces: [], findings: [{ kind: 'open-line', name: 'yoke' }] });
    expect(open.kind === 'read' && open.findings[0]?.kind === 'open-line' && open.findings[0].gap).toBeCloseTo(
      Math.hypot(70, 40),
      9,
    );
  });

  it('takes layers at their word: the stitch line within the cut line is the piece', () => {
    const piece = onlyPiece(
      read(
        '<g id="Gore"><rect class="x" id="cut" x="5" y="5" width="90" height="70"/><g id="Seam line"><rect x="15" y="15" width="70" height="50"/></g>' +
          '<path id="grainline" d="M50,20V60"/><g id="notches"><path d="M85,41H95"/></g></g>',
      ),
    );
    expect(piece).toMatchObject({
      name: 'Gore',
      drawnAs: 'net',
      grain: { from: { x: 50, y: 20 }, to: { x: 50, y: 60 } },
    });
    expect(piece.notches).toMatchObject([{ count: 1, edgeId: piece.edges[1]?.id, along: 26 }]);
    expect(pathLength(outlineOf(piece).whole)).toBeCloseTo(240, 9);
  });

  it('leaves out what is hidden or only defined, and tells of what it does not read', () => {
    const made = read(
      '<defs><rect id="a" width="50" height="40"/></defs><g display="none"><rect width="60" height="40"/></g>' +
        '<use href="#a"/><rect width="70" height="40"/>',
    );
    expect(piecesOf(made)).toHaveLength(1);
    expect(made).toMatchObject({ findings: [{ kind: 'not-read', what: 'use', count: 1 }] });
  });
});

describe('readSvg, units', () => {
  // SVG 2, 8.2 and CSS Values 3, 6.2: 1 in = 96 px = 25.4 mm = 72 pt.
  it.each([
    ['width="200mm" height="100mm" viewBox="0 0 200 100"', 60],
    ['width="20cm" height="10cm" viewBox="0 0 200 100"', 60],
    ['width="5in" height="2.5in" viewBox="0 0 127 63.5"', 60],
    ['width="960px" height="480px"', (60 * 25.4) / 96],
    ['width="144pt" height="72pt" viewBox="0 0 192 96"', (60 * 25.4) / 96],
  ])('%s', (size, across) => {
    const box = pathBounds(outlineOf(onlyPiece(read('<rect width="60" height="20"/>', size))).whole);
    expect(box.maxX).toBeCloseTo(across, 9);
  });

  it('asks when nothing says how long a unit is, and then believes the answer', () => {
    const content = '<rect x="3" y="4" width="12" height="5"/>';
    for (const size of ['viewBox="0 0 90 90"', 'width="90" height="90"', 'width="100%" height="100%"']) {
      expect(read(content, size)).toEqual({ kind: 'units-not-known', across: 12, down: 5 });
    }
    const piece = onlyPiece(readSvg(svg(content, ''), { ...reading, unit: 'in' }));
    expect(pathLength(outlineOf(piece).whole)).toBeCloseTo(2 * (12 + 5) * 25.4, 9);
  });
});

describe('readSvg, files not to be trusted', () => {
  const rect = '<rect width="60" height="20"/>';
  it.each([
    ['<script>alert(1)</script>', 'script'],
    ['<rect width="60" height="20" onclick="alert(1)"/>', 'script'],
    ['<a href="java&#10;script:alert(1)"><rect/></a>', 'script'],
    ['<image href="https://example.org/a.png"/>', 'outside-link'],
    ['<image xlink:href="file:///etc/passwd"/>', 'outside-link'],
    ['<rect fill="url(http://example.org/#a)"/>', 'outside-link'],
    ['<style>@import "a.css";</style>', 'outside-link'],
    ['<rect style="fill:url( \'//example.org\')"/>', 'outside-link'],
  ])('refuses %s', (content, kind) => {
    expect(read(`${content}${rect}`).kind).toBe(kind);
  });

  it('lets links within the file be', () => {
    expect(read(`<rect fill="url(#a)" width="60" height="20"/>`).kind).toBe('read');
  });

  it('refuses a document type, and with it every entity that might grow', () => {
    const bomb = '<!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>';
    expect(readSvg(`${bomb}${svg('<text>&b;</text>')}`, reading)).toEqual({ kind: 'document-type' });
    expect(read('<text>&b;</text>')).toEqual({ kind: 'broken-xml', line: 1 });
  });

  it('refuses nesting, elements, points and outlines beyond their limits', () => {
    expect(read('<g>'.repeat(5000) + '</g>'.repeat(5000))).toEqual({ kind: 'too-deep', limit: 100 });
    expect(read('<g/>'.repeat(200_000))).toMatchObject({ kind: 'too-many', what: 'elements' });
    expect(read(`<path d="M0,0${'h1'.repeat(300_001)}"/>`)).toMatchObject({ kind: 'too-many', what: 'points' });
    expect(read(rect.repeat(501))).toMatchObject({ kind: 'too-many', what: 'outlines' });
  });

  it('refuses what is no SVG, or broken off anywhere, and never throws', () => {
    expect(readSvg('', reading)).toEqual({ kind: 'not-this-kind' });
    expect(readSvg('<html><svg/></html>', reading)).toEqual({ kind: 'not-this-kind' });
    const whole = svg('<g id="a&amp;b"><path d="M1,2C3,4 5,60 70,8Z"/></g><!-- end -->');
    for (let end = 0; end < whole.length; end++) {
      expect(['broken-xml', 'not-this-kind']).toContain(readSvg(whole.slice(0, end), reading).kind);
    }
  });

  it('draws a path up to where its data breaks off, and says so (SVG 2, 9.5)', () => {
    const made = read('<path id="yoke" d="M0,0H50V30H0Z M10,10 L20,NaN"/>');
    expect(piecesOf(made)).toHaveLength(1);
    expect(made).toMatchObject({ findings: [{ kind: 'broken-line', name: 'yoke' }] });
  });
});
