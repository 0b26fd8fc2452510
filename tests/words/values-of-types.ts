import ts from 'typescript';

/** Values for a name and a type that no rule makes well, such as a whole garment; `undefined` where the rules do. */
export type Given = (name: string, typeName: string | undefined) => readonly unknown[] | undefined;

/** The rest are varied from 2. */
const NUMBERS = [2, 1, 0, 127];
const MOST_TOGETHER = 300;
const DEEPEST = 7;

/** A text that is found again in what is said, in whatever language; no word of any. */
export const marked = (name: string) => `Xq${name.toLowerCase()}`;

/**
 * A few values of a type, made from the type itself: every member of a union, one and two of a list, each field of an object
 * varied in its turn. Lists are not empty, for what is said of many is not said of none.
 */
export function valuesOf(checker: ts.TypeChecker, type: ts.Type, name: string, given: Given, depth = 0): unknown[] {
  const special = given(name, (type.aliasSymbol ?? type.symbol)?.name);
  if (special) return [...special];
  if (type.isUnion()) return type.types.flatMap((member) => valuesOf(checker, member, name, given, depth));
  if (type.isStringLiteral() || type.isNumberLiteral()) return [type.value];
  if (type.flags & ts.TypeFlags.BooleanLiteral) return [checker.typeToString(type) === 'true'];
  if (type.flags & ts.TypeFlags.NumberLike) return NUMBERS;
  if (type.flags & ts.TypeFlags.StringLike) return [/^(date|made|today)$/.test(name) ? '2026-11-07' : marked(name)];
  if (type.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Void) || depth > DEEPEST) return [undefined];
  const inner = (of: ts.Type, called: string) => valuesOf(checker, of, called, given, depth + 1);
  const items = checker.isArrayLikeType(type) ? checker.getTypeArguments(type as ts.TypeReference) : [];
  if (checker.isTupleType(type)) return alongside(items.map((item) => inner(item, name)));
  if (items[0]) {
    const values = inner(items[0], name);
    return [[values[0], values.at(-1)], values.slice(0, 1)];
  }
  if (type.getCallSignatures().length > 0) return [() => marked('answer')];
  const fields = checker.getPropertiesOfType(type).map((field) => field.name);
  const choices = checker.getPropertiesOfType(type).map((field) => inner(checker.getTypeOfSymbol(field), field.name));
  return alongside(choices).map((values) => Object.fromEntries(fields.map((field, i) => [field, values[i]])));
}

/** The arguments of some calls of a function: every choice with every other while they are not too many. */
export function callsOf(checker: ts.TypeChecker, signature: ts.Signature, given: Given): unknown[][] {
  const choices = signature.parameters.map((parameter) =>
    valuesOf(checker, checker.getTypeOfSymbol(parameter), parameter.name, given),
  );
  if (choices.reduce((product, { length }) => product * length, 1) > MOST_TOGETHER) return alongside(choices);
  return choices.reduce<unknown[][]>(
    (calls, values) => calls.flatMap((call) => values.map((value) => [...call, value])),
    [[]],
  );
}

/** The first of each, and then each of the others in its turn. */
function alongside(choices: readonly (readonly unknown[])[]): unknown[][] {
  const first = choices.map(([value]) => value);
  return [first, ...choices.flatMap((values, i) => values.slice(1).map((value) => first.with(i, value)))];
}
