type Random = () => number;

/** A value that JSON can hold, to be changed in place. */
type Loose = null | boolean | number | string | Loose[] | { [key: string]: Loose };

interface Slot {
  readonly holder: Loose[] | { [key: string]: Loose };
  readonly key: string;
}

/** No list grows by more letters than this. Copies are not shared: grown once more, they would fill the memory. */
const LARGEST = 1e6;

/** Stands for a number that JSON text can smuggle in as infinite; `asText` writes it so. */
export const INFINITE = '\u0001infinite';

/** A copy with a few things in it wrong: numbers, words, lists, keys. `gentle` keeps to numbers and order. */
export function mutated(value: unknown, random: Random, { gentle }: { readonly gentle: boolean }): unknown {
  const root: { [key: string]: Loose } = { root: JSON.parse(JSON.stringify(value)) };
  const times = 1 + Math.floor(random() * 6);
  for (let i = 0; i < times; i++) {
    const slots = slotsIn(root);
    const slot = pick(gentle ? slots.filter(isGentle) : slots, random);
    if (slot) change(slot, slots, random, gentle);
  }
  return root.root;
}

/** As JSON text, with what is infinite as a number too large to be one; lists too deep to be written as deeper ones. */
export function asText(value: unknown): string {
  try {
    return JSON.stringify(value)?.replaceAll(JSON.stringify(INFINITE), '1e999') ?? 'undefined';
  } catch (fault) {
    if (!(fault instanceof RangeError)) throw fault;
    return '['.repeat(50_000) + ']'.repeat(50_000);
  }
}

/** A copy with bytes changed, cut off, doubled or mixed up. */
export function mutatedBytes(bytes: Uint8Array, random: Random): Uint8Array {
  const at = () => Math.floor(random() * bytes.length);
  const copy = bytes.slice();
  switch (Math.floor(random() * 4)) {
    case 0:
      return copy.subarray(0, at());
    case 1: {
      const [from, to] = [at(), at()];
      copy.set(bytes.subarray(from, from + Math.min(64, bytes.length - Math.max(from, to))), to);
      return copy;
    }
    case 2:
      for (let i = Math.floor(random() * 40); i >= 0; i--) copy[at()] = Math.floor(random() * 256);
      return copy;
    default: {
      const place = at();
      copy[place] = (copy[place] ?? 0) ^ (1 << Math.floor(random() * 8));
      return copy;
    }
  }
}

function slotsIn(root: { [key: string]: Loose }): Slot[] {
  const slots: Slot[] = [];
  const look = (holder: Slot['holder']) => {
    for (const key of Object.keys(holder)) {
      slots.push({ holder, key });
      const inner = at({ holder, key });
      if (typeof inner === 'object' && inner !== null) look(inner);
    }
  };
  look(root);
  return slots;
}

function isGentle(slot: Slot): boolean {
  const value = at(slot);
  return (typeof value === 'number' && slot.key !== 'schema') || (Array.isArray(value) && value.length > 1);
}

function change(slot: Slot, slots: readonly Slot[], random: Random, gentle: boolean): void {
  const value = at(slot);
  if (typeof value === 'number') put(slot, otherNumber(value, slots, random, gentle));
  else if (Array.isArray(value) && (gentle || random() < 0.8)) changeList(value, random, gentle);
  else if (typeof value === 'string' && random() < 0.7) put(slot, otherWords(value, slots, random));
  else if (typeof value === 'object' && value !== null && random() < 0.5)
    changeKeys(value as { [key: string]: Loose }, random);
  else if (random() < 0.4) remove(slot);
  else put(slot, pick(ODD, random)?.() ?? null);
}

function otherNumber(value: number, slots: readonly Slot[], random: Random, gentle: boolean): Loose {
  const other = at(
    pick(
      slots.filter((slot) => typeof at(slot) === 'number'),
      random,
    ) as Slot,
  ) as number;
  const soft = [
    -value,
    0,
    other,
    value + (random() - 0.5) * 20,
    value + (random() - 0.5) * 1e-6,
    value * 1e-9,
    value * 10,
    Math.round(value),
  ];
  const hard = [value * 1e3, 1e6, -1e6, 1e-300, 5e-324, 1e21, Number.MAX_VALUE, INFINITE, String(value), 2 ** 53];
  return pick(gentle && random() < 0.9 ? soft : [...soft, ...hard], random) ?? 0;
}

function otherWords(value: string, slots: readonly Slot[], random: Random): Loose {
  const other = at(
    pick(
      slots.filter((slot) => typeof at(slot) === 'string'),
      random,
    ) as Slot,
  ) as string;
  return (
    pick(
      [other, '', value.repeat(40), 'x'.repeat(10_001), '\ud800', '\u0000', '<b onclick=x>', '2026-02-30', '1e9'],
      random,
    ) ?? ''
  );
}

function changeList(list: Loose[], random: Random, gentle: boolean): void {
  const index = Math.floor(random() * Math.max(1, list.length));
  const kind = Math.floor(random() * (gentle ? 3 : 6));
  if (kind === 0) list.reverse();
  else if (kind === 1) list.push(...list.splice(0, index));
  else if (kind === 2) list.splice(index, 1);
  else if (kind === 3) list.push(structuredClone(list[index] ?? null));
  else if (kind === 4) list.length = 0;
  else {
    const one = list[index] ?? null;
    const times = Math.min(2500, LARGEST / JSON.stringify(one).length);
    for (let i = 0; i < times; i++) list.push(structuredClone(one));
  }
}

function changeKeys(thing: { [key: string]: Loose }, random: Random): void {
  const keys = Object.keys(thing);
  const [one, other] = [pick(keys, random), pick(keys, random)];
  if (random() < 0.3) {
    Object.defineProperty(thing, pick(['__proto__', 'constructor', 'kind', 'added'], random) ?? '', {
      value: { x: 1 },
      enumerable: true,
      configurable: true,
      writable: true,
    });
  } else if (one !== undefined && other !== undefined && random() < 0.5) {
    [thing[one], thing[other]] = [thing[other] ?? null, thing[one] ?? null];
  } else if (one !== undefined) delete thing[one];
}

const ODD: readonly (() => Loose)[] = [
  () => null,
  () => true,
  () => 0,
  () => '',
  () => [],
  () => ({}),
  () => INFINITE,
  () => {
    let deep: Loose = [];
    for (let i = 0; i < 2000; i++) deep = [deep];
    return deep;
  },
];

function at({ holder, key }: Slot): Loose | undefined {
  return (holder as { [key: string]: Loose })[key];
}

function put({ holder, key }: Slot, value: Loose): void {
  (holder as { [key: string]: Loose })[key] = value;
}

function remove({ holder, key }: Slot): void {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
}

function pick<Item>(items: readonly Item[], random: Random): Item | undefined {
  return items[Math.floor(random() * items.length)];
}
