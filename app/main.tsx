import './ui/fonts.css';
import './ui/tokens.css';
import { sayNotOpened } from './shell/not-opened';
import { startLook } from './ui/look';
import { languageWanted, speak } from './words/speak';

startLook();
const language = languageWanted();
// What has words is loaded once it is known in which language they are said.
void speak(language)
  .then(() => import('./opened'))
  .then(
    ({ open }) => open(),
    () => sayNotOpened(language),
  );
