import * as english from './en/versions';
import { inLanguage } from './language';

export const { pieceName, versionsWords } = inLanguage('versions', english);
