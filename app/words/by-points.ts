import * as english from './en/by-points';
import { inLanguage } from './language';

export const { byPointsWords, stepSaid } = inLanguage('by-points', english);
