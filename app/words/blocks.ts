import * as english from './en/blocks';
import { inLanguage } from './language';

export const { blockWords } = inLanguage('blocks', english);
