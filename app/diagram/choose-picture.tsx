import { ChooseFile } from '../ui/choose-file';

interface ChoosePictureProps {
  readonly words: string;
  readonly tone?: 'plain' | 'chalk';
  readonly disabled?: boolean;
  readonly onFile: (file: File) => void;
}

/** Chooses the picture of a diagram: a photo, a scan, or a PDF of which a page is asked for. */
export function ChoosePicture(props: ChoosePictureProps) {
  return <ChooseFile icon="camera" accept="image/*,.heic,.heif,.avif,.tif,.tiff,.pdf,application/pdf" {...props} />;
}
