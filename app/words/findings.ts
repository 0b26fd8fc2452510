import * as english from './en/findings';
import { inLanguage } from './language';

export const { findingSentence } = inLanguage('findings', english);
