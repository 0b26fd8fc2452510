/** One measured figure. Where it is a comparison, the baseline was measured in the same run. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly baseline?: number;
  readonly ratio?: number;
}
