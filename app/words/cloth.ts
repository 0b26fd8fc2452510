import * as english from './en/cloth';
import { inLanguage } from './language';

export const { clothWords } = inLanguage('cloth', english);
