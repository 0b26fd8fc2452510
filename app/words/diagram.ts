import * as english from './en/diagram';
import { inLanguage } from './language';

export const { diagramWords } = inLanguage('diagram', english);
