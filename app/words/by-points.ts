import * as english from './en/by-points';
import { inLanguage } from './language';

export const { byPointsWords } = inLanguage('by-points', english);
