import type { FileRefusal } from './file-reading';

/** Pictures that stand in the file itself and can run nothing. */
const OWN_PICTURE = /^data:image\/(png|jpe?g|gif|webp);/;

/** A `url(…)` that points outside the file. */
const OUTSIDE_URL = /url\(\s*["']?\s*(?!["'#\s])([^)"']{0,200})/i;

/** Longest link that is told. */
const TOLD = 200;

/**
 * Whether an element brings a program or wants something from outside. Nothing of a file is ever run or fetched here;
 * but a file that tries is not one to trust. See: SVG 2, chapters 15 (scripting) and 16 (linking).
 */
export function unsafeElement(name: string, attributes: ReadonlyMap<string, string>): FileRefusal | undefined {
  if (name === 'script' || name === 'handler') return { kind: 'script' };
  for (const [key, value] of attributes) {
    const local = key.slice(key.indexOf(':') + 1).toLowerCase();
    if (/^on[a-z]/.test(local) && !key.includes(':')) return { kind: 'script' };
    if (local === 'href' || local === 'src') {
      // Browsers pass over control signs and spaces in a link, so they must not hide what it is.
      const link = value.replace(/[\p{Cc}\s]+/gu, '').toLowerCase();
      if (link.startsWith('javascript:') || link.startsWith('vbscript:')) return { kind: 'script' };
      if (link !== '' && !link.startsWith('#') && !OWN_PICTURE.test(link)) return outside(value);
    }
    const unsafe = unsafeStyle(value, 'attribute');
    if (unsafe) return unsafe;
  }
  return undefined;
}

/** Whether style text, of an attribute or a style sheet, wants something from outside. */
export function unsafeStyle(text: string, where: 'attribute' | 'sheet'): FileRefusal | undefined {
  if (where === 'sheet' && /@import|\\/i.test(text)) return outside(text.trim());
  const link = OUTSIDE_URL.exec(text)?.[1];
  return link === undefined || OWN_PICTURE.test(link) ? undefined : outside(link);
}

function outside(link: string): FileRefusal {
  return { kind: 'outside-link', link: link.trim().slice(0, TOLD) };
}
