import * as english from './en/reshape';
import { inLanguage } from './language';

export const { reshapeWords } = inLanguage('reshape', english);
