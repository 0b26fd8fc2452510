/** A fresh id. */
export function newId(): string {
  return crypto.randomUUID();
}
