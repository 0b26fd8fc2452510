/** The number after `--name`, or what is usual. */
export function readNumber(args: readonly string[], name: string, usual: number): number {
  const value = Number(args[args.indexOf(`--${name}`) + 1]);
  return args.includes(`--${name}`) && Number.isFinite(value) ? value : usual;
}
