import { uiWords as words } from '../words/ui';
import { Choice } from './choice';
import { chooseLook, LOOKS, useLook } from './look';

/** Light or dark, or as the device is set; remembered here. */
export function LookChoice() {
  const choice = useLook((look) => look.choice);
  return (
    <Choice
      label={words.look}
      value={choice}
      options={LOOKS.map((value) => ({ value, words: words.looks[value] }))}
      onChange={chooseLook}
    />
  );
}
