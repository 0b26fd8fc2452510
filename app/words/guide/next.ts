import * as english from '../en/guide/next';
import { inLanguage } from '../language';

export const { nextWords } = inLanguage('next', english);
