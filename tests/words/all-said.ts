import { resolve } from 'node:path';
import ts from 'typescript';
import { type Language, takeUp } from '../../app/words/language';
import type { Place } from '../../core/garment/finding';
import { linden } from '../garment/linden';
import { callsOf, type Given, marked } from './values-of-types';

/** A word or sentence in each language, and how it came about. */
export interface Said {
  /** `cloth.clothWords.takes`, with the arguments where it is a function's answer. */
  readonly where: string;
  readonly en: string;
  readonly de: string;
}

/** Every text of every file of words in both languages, each function called with arguments of the types it takes. */
export function allSaid(
  english: Readonly<Record<string, object>>,
  german: Readonly<Record<string, object>>,
): readonly Said[] {
  const folder = resolve(import.meta.dirname, '../../app/words/en');
  const paths = Object.fromEntries(Object.keys(english).map((name) => [name, resolve(folder, `${name}.ts`)]));
  const program = ts.createProgram(Object.values(paths), {
    strict: true,
    lib: ['lib.esnext.d.ts'],
    types: [],
    target: ts.ScriptTarget.ESNext,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
  });
  const checker = program.getTypeChecker();
  const said: Said[] = [];

  function gather(type: ts.Type, en: unknown, de: unknown, where: string): void {
    if (typeof en === 'string' || typeof de === 'string') {
      said.push({ where, en: String(en), de: String(de) });
    } else if (typeof en === 'function') {
      const [signature] = (type.isUnion() ? type.types : [type]).flatMap((one) => one.getCallSignatures());
      if (!signature) throw new Error(`It is not known what ${where} takes.`);
      for (const call of callsOf(checker, signature, given)) {
        const told = `${where}(${call.map(written).join(', ')})`;
        gather(signature.getReturnType(), answer('en', en, call, told), answer('de', de, call, told), told);
      }
    } else if (Array.isArray(en)) {
      const others: readonly unknown[] = Array.isArray(de) ? de : [];
      const item = checker.getTypeArguments(type as ts.TypeReference);
      for (const [i, one] of en.entries()) gather(item[i] ?? item[0] ?? type, one, others[i], `${where}.${i}`);
    } else if (typeof en === 'object' && en !== null) {
      for (const field of checker.getPropertiesOfType(type)) {
        if (field.name === 'drawing') continue; // the name of a picture
        const [one, other] = [en, de].map((words) => (words as Record<string, unknown> | undefined)?.[field.name]);
        gather(checker.getNonNullableType(checker.getTypeOfSymbol(field)), one, other, `${where}.${field.name}`);
      }
    }
  }

  for (const [name, path] of Object.entries(paths)) {
    const file = checker.getSymbolAtLocation(program.getSourceFile(path) as ts.SourceFile);
    for (const exported of file ? checker.getExportsOfModule(file) : []) {
      const [en, de] = [english[name], german[name]].map((words) => (words as Record<string, unknown>)[exported.name]);
      if (en !== undefined) gather(checker.getTypeOfSymbol(exported), en, de, `${name}.${exported.name}`);
    }
  }
  return said;
}

/** What a function of words answers while its language is spoken. */
function answer(spoken: Language, words: unknown, call: readonly unknown[], where: string): unknown {
  takeUp(spoken, {});
  try {
    return (words as (...args: readonly unknown[]) => unknown)(...call);
  } catch (error) {
    throw new Error(`${where} in ${spoken}`, { cause: error });
  }
}

const written = (value: unknown) => (JSON.stringify(value) ?? 'undefined').slice(0, 160);

const garment = named(linden()) as ReturnType<typeof linden>;
const [piece, ring, diagram, cloth] = [garment.pieces[0], garment.rings[0], garment.diagrams[0], garment.cloths?.[0]];
const real: Readonly<Record<string, readonly (string | undefined)[]>> = {
  pieceId: [piece?.id],
  pieceIds: [piece?.id],
  edgeId: piece?.edges.map(({ id }) => id) ?? [],
  cornerId: [piece?.corners[0]?.id],
  ringId: [ring?.id],
  levelId: [ring?.levels[0]?.id],
  diagramId: [diagram?.id],
  clothId: [cloth?.id],
};

const places: readonly Place[] = [
  { kind: 'edge', pieceId: piece?.id ?? '', edgeId: piece?.edges[0]?.id ?? '' },
  { kind: 'piece', pieceId: piece?.id ?? '' },
];

/** Things that hang together cannot be made from their types alone: they are taken from a whole garment. */
const given: Given = (name, typeName) => {
  if (typeName === 'Garment') return [garment];
  if (typeName === 'Piece') return garment.pieces.slice(0, 1);
  if (typeName === 'Place') return places;
  if (name === 'index') return [0, 1, 2, 3];
  const ids = real[name];
  if (ids) return name.endsWith('s') ? [ids, [...ids, 'gone']] : [...ids, 'gone'];
  return undefined;
};

/** A garment whose own names are no words of any language. */
function named(value: unknown, name = ''): unknown {
  if (typeof value === 'string')
    return /^(name|book|remarks|wornOver|text|note|reason)$/.test(name) && value ? marked(name) : value;
  if (Array.isArray(value)) return value.map((item) => named(item, name));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, named(item, key)]));
}
