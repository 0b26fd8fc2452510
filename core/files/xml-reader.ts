/**
 * A small, strict reader of XML for files from elsewhere: elements, attributes, text, comments and the five named signs.
 * It runs nothing, fetches nothing and knows no document type, so no entity can grow; it stops at the first thing wrong.
 *
 * See: W3C, Extensible Markup Language (XML) 1.0, fifth edition. Not looked at: which signs a name may have beyond
 * letters, figures and `_ : - .`, and namespaces.
 */
import { XML_SIGNS } from './xml-text';

export type XmlEvent =
  | { readonly kind: 'start'; readonly name: string; readonly attributes: ReadonlyMap<string, string> }
  | { readonly kind: 'end'; readonly name: string }
  | { readonly kind: 'text'; readonly text: string }
  /** `<?name …?>`, other than the declaration at the top. */
  | { readonly kind: 'instruction'; readonly name: string };

/** Why a file is not read on. `line` counts from 1. */
export type XmlRefusal =
  | { readonly kind: 'broken-xml'; readonly line: number }
  | { readonly kind: 'document-type' }
  | { readonly kind: 'too-deep'; readonly limit: number }
  | { readonly kind: 'too-many'; readonly what: 'elements'; readonly limit: number };

/** Deeper nesting than any drawing program makes, and no risk to whoever walks it. */
export const DEEPEST = 100;

/** Elements in one file at most. */
export const MOST_ELEMENTS = 200_000;

const NAME = /[\p{L}_:][\p{L}\p{N}\p{M}_:.-]*/uy;
const SPACE = /[ \t\r\n]*/y;

/**
 * The events of an XML text one after another, ending early with a refusal where something is wrong. An element
 * without content gives a start and an end. Time grows with the length of the text.
 */
export function* xmlEvents(text: string): Generator<XmlEvent, XmlRefusal | undefined> {
  const open: string[] = [];
  let [at, elements, isRootDone] = [text.startsWith('\ufeff') ? 1 : 0, 0, false];
  const broken = (where: number): XmlRefusal => ({ kind: 'broken-xml', line: lineOf(text, where) });
  while (at < text.length) {
    if (text[at] !== '<') {
      const end = indexOrEnd(text, '<', at);
      const words = decoded(text.slice(at, end));
      if (words === undefined || (open.length === 0 && words.trim() !== '')) return broken(at);
      if (open.length > 0) yield { kind: 'text', text: words };
      at = end;
    } else if (text.startsWith('<!--', at)) {
      const end = text.indexOf('-->', at + 4);
      if (end < 0) return broken(at);
      at = end + 3;
    } else if (text.startsWith('<![CDATA[', at)) {
      const end = text.indexOf(']]>', at);
      if (end < 0 || open.length === 0) return broken(at);
      yield { kind: 'text', text: text.slice(at + 9, end) };
      at = end + 3;
    } else if (text.startsWith('<!', at)) {
      return text.startsWith('<!DOCTYPE', at) || text.startsWith('<!ENTITY', at)
        ? { kind: 'document-type' }
        : broken(at);
    } else if (text.startsWith('<?', at)) {
      const end = text.indexOf('?>', at);
      const name = matchAt(NAME, text, at + 2);
      if (end < 0 || name === undefined) return broken(at);
      if (name !== 'xml') yield { kind: 'instruction', name };
      at = end + 2;
    } else if (text[at + 1] === '/') {
      const name = matchAt(NAME, text, at + 2);
      const end = at + 2 + (name?.length ?? 0);
      const close = end + (matchAt(SPACE, text, end) as string).length;
      if (name === undefined || open.pop() !== name || text[close] !== '>') return broken(at);
      yield { kind: 'end', name };
      isRootDone = open.length === 0;
      at = close + 1;
    } else {
      const tag = startTag(text, at);
      if (!tag || isRootDone) return broken(at);
      elements += 1;
      if (elements > MOST_ELEMENTS) return { kind: 'too-many', what: 'elements', limit: MOST_ELEMENTS };
      if (open.length >= DEEPEST) return { kind: 'too-deep', limit: DEEPEST };
      yield { kind: 'start', name: tag.name, attributes: tag.attributes };
      if (tag.isEmpty) {
        yield { kind: 'end', name: tag.name };
        isRootDone = open.length === 0;
      } else open.push(tag.name);
      at = tag.end;
    }
  }
  return open.length > 0 || !isRootDone ? broken(text.length) : undefined;
}

interface StartTag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly isEmpty: boolean;
  readonly end: number;
}

/** `undefined` for a tag that is not well formed, has an attribute twice or a `<` in a value. */
function startTag(text: string, from: number): StartTag | undefined {
  const name = matchAt(NAME, text, from + 1);
  if (name === undefined) return undefined;
  const attributes = new Map<string, string>();
  let at = from + 1 + name.length;
  for (;;) {
    const space = (matchAt(SPACE, text, at) as string).length;
    at += space;
    if (text[at] === '>') return { name, attributes, isEmpty: false, end: at + 1 };
    if (text.startsWith('/>', at)) return { name, attributes, isEmpty: true, end: at + 2 };
    const key = space > 0 ? matchAt(NAME, text, at) : undefined;
    if (key === undefined || attributes.has(key)) return undefined;
    at += key.length;
    at += (matchAt(SPACE, text, at) as string).length;
    if (text[at] !== '=') return undefined;
    at += 1 + (matchAt(SPACE, text, at + 1) as string).length;
    const quote = text[at];
    const end = quote === '"' || quote === "'" ? text.indexOf(quote, at + 1) : -1;
    const raw = text.slice(at + 1, end);
    const value = end < 0 || raw.includes('<') ? undefined : decoded(raw);
    if (value === undefined) return undefined;
    attributes.set(key, value);
    at = end + 1;
  }
}

/** Text with `&…;` replaced by its signs; `undefined` for an entity that is none of the five or of a sign by number. */
function decoded(raw: string): string | undefined {
  if (!raw.includes('&')) return raw;
  let isBad = false;
  const text = raw.replace(/&(?:#(\d{1,7})|#x([\da-fA-F]{1,6})|(\w{1,8}));|&/g, (_, decimal, hex, name) => {
    const code = decimal ? Number(decimal) : hex ? Number.parseInt(hex, 16) : undefined;
    const sign =
      code === undefined ? XML_SIGNS.get(name ?? '') : code > 0 && code <= 0x10ffff && String.fromCodePoint(code);
    if (!sign) isBad = true;
    return sign || '';
  });
  return isBad ? undefined : text;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function indexOrEnd(text: string, sign: string, from: number): number {
  const at = text.indexOf(sign, from);
  return at < 0 ? text.length : at;
}

function lineOf(text: string, at: number): number {
  let line = 1;
  for (let i = text.indexOf('\n'); i >= 0 && i < at; i = text.indexOf('\n', i + 1)) line += 1;
  return line;
}
