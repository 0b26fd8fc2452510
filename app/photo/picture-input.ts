/** What a drop or a paste holds for us: a file, something else worth a sentence, or nothing that concerns us. */
export type Carried =
  | { readonly kind: 'file'; readonly file: File }
  | { readonly kind: 'link' }
  | { readonly kind: 'words' }
  | { readonly kind: 'nothing' };

/**
 * Looks through a drop or a paste. A file of any kind is taken, so that what cannot be read is refused by name; a picture
 * dragged from a web page brings its file with it in some browsers and only a link in others.
 */
export function carriedBy(transfer: DataTransfer | null): Carried {
  if (!transfer) return { kind: 'nothing' };
  const files = [...transfer.files];
  const file = files.find(({ type }) => type.startsWith('image/')) ?? files[0];
  if (file) return { kind: 'file', file };
  if (transfer.types.includes('text/uri-list')) return { kind: 'link' };
  return transfer.types.includes('text/plain') || transfer.types.includes('text/html')
    ? { kind: 'words' }
    : { kind: 'nothing' };
}

/** Whether something is dragged that could turn out to be a picture; its contents cannot be seen before it is let go. */
export function mayHoldPicture(transfer: DataTransfer | null): boolean {
  return transfer?.types.includes('Files') || transfer?.types.includes('text/uri-list') || false;
}
