import * as english from '../en/guide/how-to';
import { inLanguage } from '../language';

export type { DrawingName } from '../en/guide/how-to';

export const { howTos } = inLanguage('how-to', english);
