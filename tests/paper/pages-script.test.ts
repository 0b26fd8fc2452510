import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { writeProject } from '../../app/storage/project-file';
import { main } from '../../scripts/pages';
import { garmentOf, rectangle } from './pieces';

let folder: string;
const inFolder = (name: string) => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'script-'));
  const garment = garmentOf([rectangle(0, 0, 150, 120)]);
  writeFileSync(inFolder('bare.json'), JSON.stringify(garment));
  writeFileSync(inFolder('empty.json'), JSON.stringify(garmentOf([])));
  writeFileSync(inFolder('other.json'), '{"schema": 1}');
  writeFileSync(inFolder('project.zip'), writeProject({ garment, versions: [], photos: [] }));
});
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => vi.restoreAllMocks());

describe('npm run pages', () => {
  it.each(['bare.json', 'project.zip'])('makes a PDF of %s and says where it is', async (file) => {
    const said = vi.spyOn(console, 'log').mockImplementation(() => {});
    const out = inFolder(`${file}.pdf`);
    expect(await main([inFolder(file), '--paper', 'letter', '--turn', '--squares', '--out', out])).toBe(0);
    const pdf = readFileSync(out).toString('latin1');
    expect(pdf.startsWith('%PDF-1.')).toBe(true);
    expect(said.mock.calls[0]?.[0]).toContain('3 pages');
  });

  it.each([
    ['no file', () => ['--out', 'x.pdf'], /Say which garment/],
    ['no place for the pages', () => [inFolder('bare.json')], /--out/],
    ['a value left out', () => [inFolder('bare.json'), '--out'], /--out needs a value/],
    ['no such paper', () => [inFolder('bare.json'), '--out', 'x.pdf', '--paper', 'b5'], /No paper is called b5/],
    ['a word too many', () => [inFolder('bare.json'), '--out', 'x.pdf', '--large'], /--large is not understood/],
    ['a file that is not there', () => [inFolder('none.json'), '--out', 'x.pdf'], /cannot be read/],
    ['a file that is no garment', () => [inFolder('other.json'), '--out', 'x.pdf'], /is no garment/],
    ['a garment without pieces', () => [inFolder('empty.json'), '--out', inFolder('x.pdf')], /no piece/],
    ['a folder that is not there', () => [inFolder('bare.json'), '--out', inFolder('no/x.pdf')], /cannot be written/],
  ])('answers %s with one sentence and a failing exit', async (_, args, sentence) => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => {});
    expect(await main(args())).toBe(1);
    expect(said.mock.calls).toHaveLength(1);
    expect(String(said.mock.calls[0]?.[0])).toMatch(sentence);
  });
});
