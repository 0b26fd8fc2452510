import * as english from './en/project-file';
import { inLanguage } from './language';

export const { projectFileWords } = inLanguage('project-file', english);
