import * as english from './en/mockup';
import { inLanguage } from './language';

export const { pinnedSentence, notCarriedSentence, carryNoteSentence, mockupWords } = inLanguage('mockup', english);
