import type { ReactNode } from 'react';
import styles from './button.module.css';
import { Icon, type IconName } from './icon';

interface ButtonProps {
  readonly children?: ReactNode;
  readonly onPress: () => void;
  readonly tone?: 'plain' | 'chalk' | 'quiet' | 'wrong';
  readonly disabled?: boolean;
  /** Spoken and shown on hover; needed when the button has only an icon. */
  readonly title?: string;
  /** Its name for those who hear the page, where its words alone would not tell it from its neighbours. */
  readonly label?: string;
  /** For a button that stays down. */
  readonly pressed?: boolean;
  readonly icon?: IconName;
  /** What of the job it does, so that it can be led to: as on a card. */
  readonly step?: string;
}

/** A button. Blue is for the one thing this part of the screen is for. */
export function Button(props: ButtonProps) {
  const { children, onPress, tone = 'plain', disabled, title, label, pressed, icon, step } = props;
  const named = label ?? (children === undefined ? title : undefined);
  return (
    <button
      type="button"
      className={styles.button}
      data-tone={tone}
      data-icon-only={children === undefined || undefined}
      onClick={onPress}
      disabled={disabled}
      title={title}
      aria-label={named}
      aria-pressed={pressed}
      data-step={step}
    >
      {icon && <Icon name={icon} />}
      {children}
    </button>
  );
}
