import { readFileSync } from 'node:fs';
import type { PaperFonts } from '../../core/paper/pdf-document';

const bytes = (name: string) => new Uint8Array(readFileSync(new URL(`../../public/fonts/${name}`, import.meta.url)));

/** The fonts that the program prints with. */
export const fonts: PaperFonts = { plain: bytes('dejavu-sans.ttf'), bold: bytes('dejavu-sans-bold.ttf') };
