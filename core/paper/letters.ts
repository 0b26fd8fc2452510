/** A, B … Z, AA, AB … for 0, 1 …: the rows of pages, and the corners of a piece in the order of drawing. */
export function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/** The number that letters stand for: 0 for A, 27 for AB. */
export function lettersRead(text: string): number {
  return [...text.toUpperCase()].reduce((so, letter) => so * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
