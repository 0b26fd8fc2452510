import type { GreyPicture } from './grey-picture';

/**
 * The picture with each pixel the mean of the square of `2 radiusPx + 1` a side round it (`radiusPx` a whole number of
 * at least 0); beyond the edge the outermost pixels go on. The time does not depend on the radius.
 */
export function boxBlurred({ width, height, data }: GreyPicture, radiusPx: number): GreyPicture {
  if (radiusPx < 1) return { width, height, data: data.slice() };
  const sums = new Int32Array(width);
  const across = new Int32Array(width * height);
  const side = 2 * radiusPx + 1;
  const [lastX, lastY] = [width - 1, height - 1];
  for (let y = 0; y < height; y++) {
    const row = y * width;
    let sum = 0;
    for (let x = -radiusPx; x <= radiusPx; x++) sum += data[row + Math.min(Math.max(x, 0), lastX)] as number;
    for (let x = 0; x < width; x++) {
      across[row + x] = sum;
      sum += data[row + Math.min(x + radiusPx + 1, lastX)] as number;
      sum -= data[row + Math.max(x - radiusPx, 0)] as number;
    }
  }
  const blurred = new Uint8Array(width * height);
  const share = 1 / (side * side);
  for (let y = -radiusPx; y <= radiusPx; y++) addRow(sums, across, Math.min(Math.max(y, 0), lastY) * width, 1);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) blurred[row + x] = (sums[x] as number) * share + 0.5;
    addRow(sums, across, Math.min(y + radiusPx + 1, lastY) * width, 1);
    addRow(sums, across, Math.max(y - radiusPx, 0) * width, -1);
  }
  return { width, height, data: blurred };
}

function addRow(sums: Int32Array, rows: Int32Array, from: number, times: 1 | -1): void {
  for (let x = 0; x < sums.length; x++) sums[x] = (sums[x] as number) + times * (rows[from + x] as number);
}
