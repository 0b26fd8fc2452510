import type { Language } from '../words/language';
import { speak } from '../words/speak';
import type { PdfCalls } from './pdf-calls';
import { serve, type WorkerPort } from './serve';

// The compiler takes `self` for a window; in a worker it is the port itself. The page says its language as the name.
serve<PdfCalls>(self as unknown as WorkerPort, async () => {
  await speak(self.name as Language);
  return (await import('./pdf-made')).pdfMade;
});
