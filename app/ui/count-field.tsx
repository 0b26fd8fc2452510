import { NumberField } from './number-field';

interface CountFieldProps {
  readonly label: string;
  readonly value: number;
  /** The smallest number that makes sense here; 1 unless said. */
  readonly least?: number;
  readonly onCommit: (count: number) => void;
}

/** How many: a whole number up to 99. */
export function CountField({ least = 1, ...rest }: CountFieldProps) {
  return <NumberField {...rest} least={least} most={99} whole />;
}
