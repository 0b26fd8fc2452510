/** Hands a file to the person, by the browser's own way of saving. */
export function download(bytes: Uint8Array<ArrayBuffer> | Blob, name: string, type: string): void {
  const url = URL.createObjectURL(bytes instanceof Blob ? bytes : new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the file by then; a minute is generous for a slow disk.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A name as a file name: letters and figures of any script, and single hyphens. */
export function fileName(name: string): string {
  return (
    name
      .trim()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '')
      .toLowerCase() || 'garment'
  );
}
