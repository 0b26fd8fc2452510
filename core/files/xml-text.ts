/** Text as it may stand in an XML file. */

/** What XML 1.0 (section 2.2) has no place for, written or not: most control signs, halves of signs, two non-signs. */
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these signs are what is looked for.
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** The five signs that XML keeps for itself (section 4.6). */
export const XML_SIGNS: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
]);

const NAMES = new Map([...XML_SIGNS].map(([name, sign]) => [sign, name]));

/** Text for an element or an attribute: any script stays as it is, what XML cannot hold is left out. */
export function xmlText(text: string): string {
  return text.replace(FORBIDDEN, '').replace(/[&<>"']/g, (sign) => `&${NAMES.get(sign)};`);
}
