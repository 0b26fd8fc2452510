import * as english from '../en/guide/glossary';
import { inLanguage } from '../language';

export const { glossary } = inLanguage('glossary', english);
