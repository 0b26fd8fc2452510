import type { Language } from '../words/language';
import { notOpened } from '../words/not-opened';
import styles from './not-opened.module.css';

/** Stands on the page when a part of the program did not come: without React, which may be what is missing. */
export function sayNotOpened(language: Language): void {
  const { sentence, again } = notOpened[language];
  const said = document.createElement('p');
  said.setAttribute('role', 'alert');
  said.textContent = sentence;
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = again;
  button.addEventListener('click', () => location.reload());
  const main = document.createElement('main');
  main.className = styles.notOpened ?? '';
  main.append(said, button);
  document.documentElement.lang = language;
  document.getElementById('app')?.replaceChildren(main);
}
