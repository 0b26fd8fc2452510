import { describe, expect, it } from 'vitest';
import { type XmlEvent, type XmlRefusal, xmlEvents } from '../../core/files/xml-reader';

function all(text: string): { events: XmlEvent[]; refusal: XmlRefusal | undefined } {
  const reader = xmlEvents(text);
  const events: XmlEvent[] = [];
  for (;;) {
    const next = reader.next();
    if (next.done) return { events, refusal: next.value };
    events.push(next.value);
  }
}

describe('xmlEvents', () => {
  it('gives elements, attributes in either quotes, text, CDATA and signs by number', () => {
    const { events, refusal } = all(
      '\ufeff<?xml version="1.0"?>\n<a:b c = "1 &lt; 2" d=\'&#x1F9F5;&#233;\'>x &amp; y<![CDATA[<&>]]><e/><!-- <z> --></a:b>\n',
    );
    expect(refusal).toBeUndefined();
    expect(events).toEqual([
      {
        kind: 'start',
        name: 'a:b',
        attributes: new Map([
          ['c', '1 < 2'],
          ['d', '🧵é'],
        ]),
      },
      { kind: 'text', text: 'x & y' },
      { kind: 'text', text: '<&>' },
      { kind: 'start', name: 'e', attributes: new Map() },
      { kind: 'end', name: 'e' },
      { kind: 'end', name: 'a:b' },
    ]);
  });

  // XML 1.0: 2.1 one root, 2.8, 3 matching tags, 3.1 no attribute twice and no < in a value, 4.1 no unknown entity.
  it.each([
    '<a><b></a></b>',
    '<a/><b/>',
    'words<a/>',
    '<a b="1" b="2"/>',
    '<a b="<"/>',
    '<a b=1/>',
    '<a b="1"c="2"/>',
    '<a>&constructor;</a>',
    '<a>& b</a>',
    '<a>&#0;</a>',
    '<a>&#x110000;</a>',
    '<a><!-- </a>',
    '<1/>',
    '',
  ])('refuses %s as broken', (text) => {
    expect(all(text).refusal).toEqual({ kind: 'broken-xml', line: 1 });
  });

  it('names the line that is broken', () => {
    expect(all('<a>\n<b/>\n\n<c d></a>').refusal).toEqual({ kind: 'broken-xml', line: 4 });
  });
});
