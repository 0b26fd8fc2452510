import * as english from './en/demo';
import { inLanguage } from './language';

export const { demoWords } = inLanguage('demo', english);
