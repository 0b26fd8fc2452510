/** What a translation must have in the place of an English value: the same names, the same kinds, other words. */
export type Said<English> = English extends string
  ? string
  : English extends (...args: infer Args) => infer Answer
    ? (...args: Args) => Said<Answer>
    : English extends readonly (infer One)[]
      ? readonly Said<One>[]
      : English extends object
        ? { readonly [Name in keyof English]: Said<English[Name]> }
        : English;
