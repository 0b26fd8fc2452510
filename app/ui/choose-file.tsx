import { type ComponentProps, useRef } from 'react';
import { Button } from './button';

interface ChooseFileProps extends Pick<ComponentProps<typeof Button>, 'icon' | 'tone' | 'disabled'> {
  readonly words: string;
  /** The kinds of file offered, as the attribute `accept` lists them. */
  readonly accept: string;
  /** Asks for the camera itself, where the device has one. */
  readonly camera?: boolean;
  readonly onFile: (file: File) => void;
}

/** A button for the system's own way to choose a file; for pictures a phone offers the camera as well. */
export function ChooseFile({ words, accept, camera = false, onFile, ...button }: ChooseFileProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button {...button} onPress={() => input.current?.click()}>
        {words}
      </Button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={words}
        accept={accept}
        {...(camera ? { capture: 'environment' as const } : {})}
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
