import { describe, expect, it } from 'vitest';
import { carriedBy, mayHoldPicture } from '../../app/photo/picture-input';

/** What the browser hands over with a drop or a paste, as far as it is looked at. */
function transfer(files: readonly File[], types: readonly string[]): DataTransfer {
  return { files, types } as unknown as DataTransfer;
}

const page = new File(['%PDF-'], 'page.pdf', { type: 'application/pdf' });
const photo = new File(['…'], 'photo.jpg', { type: 'image/jpeg' });

describe('carriedBy', () => {
  it('takes the picture among several files', () => {
    expect(carriedBy(transfer([page, photo], ['Files']))).toEqual({ kind: 'file', file: photo });
  });

  it('takes a file of another kind too, so that it can be refused by name', () => {
    expect(carriedBy(transfer([page], ['Files']))).toEqual({ kind: 'file', file: page });
  });

  it('takes the file, not the link, of a picture dragged from a web page', () => {
    expect(carriedBy(transfer([photo], ['text/uri-list', 'text/html', 'Files']))).toEqual({
      kind: 'file',
      file: photo,
    });
  });

  it.each([
    ['link', ['text/uri-list', 'text/plain']],
    ['words', ['text/plain']],
    ['words', ['text/html']],
    ['nothing', []],
  ])('knows %s when no file comes with it', (kind, types) => {
    expect(carriedBy(transfer([], types))).toEqual({ kind });
  });

  it('finds nothing where there is no transfer at all', () => {
    expect(carriedBy(null)).toEqual({ kind: 'nothing' });
  });
});

describe('mayHoldPicture', () => {
  it('hopes for files and links, not for words', () => {
    expect(mayHoldPicture(transfer([], ['Files']))).toBe(true);
    expect(mayHoldPicture(transfer([], ['text/uri-list']))).toBe(true);
    expect(mayHoldPicture(transfer([], ['text/plain']))).toBe(false);
    expect(mayHoldPicture(null)).toBe(false);
  });
});
