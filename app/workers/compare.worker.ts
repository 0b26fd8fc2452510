import { laidOver } from '../../core/compare/laid-over';
import { IDENTITY } from '../../core/geometry/affine';
import type { CompareCalls } from './compare-calls';
import { serve, type WorkerPort } from './serve';

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<CompareCalls>(self as unknown as WorkerPort, {
  async bestFit({ under, over, mirrored }) {
    return { answer: laidOver(under, over, { kind: 'best', mirrored }) ?? IDENTITY };
  },
});
