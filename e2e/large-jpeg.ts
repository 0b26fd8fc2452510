/** How many pixels a block of a JPEG has each way; what is drawn here is of whole blocks. */
export const BLOCK_PX = 8;

/** The two greys, less 128, as the only coefficient of a block in steps of one grey; they part by 192. */
const PAPER = 104;
const INK = -88;

/**
 * A grey JPEG of so many blocks each way, dark where `isInk` says so: a picture of a hundred megapixels takes half a
 * megabyte, and is made without ever lying in memory. See: ITU-T T.81, annexes B (markers), F.1.2 (coding) and K.
 */
export function largeJpeg(across: number, down: number, isInk: (column: number, row: number) => boolean): Buffer {
  const big16 = (n: number) => [n >> 8, n & 0xff];
  const segment = (marker: number, body: readonly number[]) => [0xff, marker, ...big16(body.length + 2), ...body];
  const bits = new Bits();
  let before = 0;
  for (let row = 0; row < down; row++) {
    for (let column = 0; column < across; column++) {
      const level = isInk(column, row) ? INK : PAPER;
      const step = level - before;
      before = level;
      // Codes of one, two and three bits for no step, one of eight bits and one of seven; then the step, and no more.
      if (step === 0) bits.put(0b0, 1);
      else if (Math.abs(step) >= 128) bits.put(0b10, 2).put(step > 0 ? step : step + 255, 8);
      else bits.put(0b110, 3).put(step > 0 ? step : step + 127, 7);
      bits.put(0, 1);
    }
  }
  const lengths = (...counts: number[]) => [...counts, ...Array(16 - counts.length).fill(0)];
  return Buffer.concat([
    Buffer.from([
      ...[0xff, 0xd8],
      ...segment(0xdb, [0, ...Array(64).fill(BLOCK_PX)]),
      ...segment(0xc0, [8, ...big16(down * BLOCK_PX), ...big16(across * BLOCK_PX), 1, 1, 0x11, 0]),
      ...segment(0xc4, [0x00, ...lengths(1, 1, 1), 0, 8, 7]),
      ...segment(0xc4, [0x10, ...lengths(1), 0]),
      ...segment(0xda, [1, 1, 0, 0, 63, 0]),
    ]),
    bits.whole(),
    Buffer.from([0xff, 0xd9]),
  ]);
}

/** Bits one after another, the highest first; a byte of ones is followed by one of noughts. */
class Bits {
  private bytes: number[] = [];
  private held = 0;
  private count = 0;

  put(value: number, size: number): this {
    this.held = (this.held << size) | value;
    this.count += size;
    while (this.count >= 8) {
      this.count -= 8;
      const byte = (this.held >> this.count) & 0xff;
      this.bytes.push(byte);
      if (byte === 0xff) this.bytes.push(0);
      this.held &= (1 << this.count) - 1;
    }
    return this;
  }

  whole(): Buffer {
    if (this.count > 0) this.put((1 << (8 - this.count)) - 1, 8 - this.count);
    return Buffer.from(this.bytes);
  }
}
