import * as english from '../en/guide/guide';
import { inLanguage } from '../language';

export const { guideWords } = inLanguage('guide', english);
