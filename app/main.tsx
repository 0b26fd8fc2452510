import './ui/fonts.css';
import './ui/tokens.css';
import { startLook } from './ui/look';
import { languageWanted, speak } from './words/speak';

startLook();
// What has words is loaded once it is known in which language they are said.
void speak(languageWanted())
  .then(() => import('./opened'))
  .then(({ open }) => open());
