import * as english from './en/trial';
import { inLanguage } from './language';

export const { trialWords } = inLanguage('trial', english);
