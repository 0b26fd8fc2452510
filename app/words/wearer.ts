import * as english from './en/wearer';
import { inLanguage } from './language';

export const { wearerWords } = inLanguage('wearer', english);
