// In a process of its own: pages of so many gores as they are drawn, and the most memory the process ever held.
import { readFileSync } from 'node:fs';
import { paperSheetWords } from '../app/words/paper-sheet';
import { patternPdf } from '../core/paper/pattern-pdf';
import { sampleGarment } from './sample-garment';

const garment = sampleGarment(Number(process.argv[2]));
const font = (name: string) => readFileSync(`public/fonts/${name}`);
const made = await patternPdf({
  garment: { ...garment, paper: { ...garment.paper, placed: 'as-drawn' } },
  what: 'pages',
  words: paperSheetWords('in', 'sixteenth'),
  fonts: { plain: font('dejavu-sans.ttf'), bold: font('dejavu-sans-bold.ttf') },
  today: '2026-01-02',
});
if (made.kind !== 'pdf') throw new Error('the garment has pages');
console.log(JSON.stringify({ pages: made.pages, mostKb: mostKb() }));

/** Since this program began: what the system counts for the process may begin with the one that started it. */
function mostKb(): number {
  try {
    return Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync('/proc/self/status', 'utf8'))?.[1]);
  } catch {
    return process.resourceUsage().maxRSS;
  }
}
