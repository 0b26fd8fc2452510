import * as english from './en/squares';
import { inLanguage } from './language';

export const { squaresWords } = inLanguage('squares', english);
