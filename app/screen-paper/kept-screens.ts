/**
 * What was measured on the screens of this device. It is no part of a garment: another device has another screen. The
 * browser's small store holds it; where it holds nothing she is asked again.
 */
import { type Calibration, screenMap } from '../../core/screen/calibration';

const KEY = 'inchsquare screens';

/** More screens than this are not remembered; the oldest goes. */
const MOST = 20;

export interface KeptScreen {
  readonly kind: 'screen' | 'beam';
  readonly key: string;
  readonly calibration: Calibration;
  /** YYYY-MM-DD */
  readonly date: string;
}

export function keptScreen(kind: KeptScreen['kind'], key: string): KeptScreen | undefined {
  return all().find((one) => one.kind === kind && one.key === key);
}

export function keepScreen(kept: KeptScreen): void {
  const others = all().filter(({ kind, key }) => kind !== kept.kind || key !== kept.key);
  try {
    localStorage.setItem(KEY, JSON.stringify([...others, kept].slice(-MOST)));
  } catch {
    // What cannot be kept holds until the page is left.
  }
}

function all(): readonly KeptScreen[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isKept) : [];
  } catch {
    return [];
  }
}

function isKept(value: unknown): value is KeptScreen {
  const { kind, key, date, calibration } = (value ?? {}) as Partial<KeptScreen>;
  if ((kind !== 'screen' && kind !== 'beam') || typeof key !== 'string' || typeof date !== 'string') return false;
  const { corners, across, down } = (calibration ?? {}) as Partial<Calibration>;
  const isRead =
    Array.isArray(corners) &&
    corners.length === 4 &&
    corners.every((corner) => Number.isFinite(corner?.x) && Number.isFinite(corner?.y));
  return isRead && screenMap({ corners, across: Number(across), down: Number(down) }).kind === 'screen-map';
}
