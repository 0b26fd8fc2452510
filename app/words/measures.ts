import * as english from './en/measures';
import { inLanguage } from './language';

export const { measureNames, depthOf, fieldOf } = inLanguage('measures', english);
