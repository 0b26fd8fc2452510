import * as english from './en/storage';
import { inLanguage } from './language';

export const { storageWords } = inLanguage('storage', english);
