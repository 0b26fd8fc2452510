import * as english from '../en/guide/help';
import { inLanguage } from '../language';

export const { helpWords } = inLanguage('help', english);
