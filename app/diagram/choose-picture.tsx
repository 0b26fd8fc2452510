import { useRef } from 'react';
import { Button } from '../ui/button';

interface ChoosePictureProps {
  readonly words: string;
  readonly tone?: 'plain' | 'chalk';
  readonly disabled?: boolean;
  readonly onFile: (file: File) => void;
}

/** The system's own way to choose a picture; on a phone that offers the camera as well. */
export function ChoosePicture({ words, tone = 'plain', disabled = false, onFile }: ChoosePictureProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button icon="camera" tone={tone} disabled={disabled} onPress={() => input.current?.click()}>
        {words}
      </Button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={words}
        accept="image/*,.heic,.heif,.avif,.tif,.tiff,.pdf,application/pdf"
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file chosen again after a refusal must be heard as well.
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
