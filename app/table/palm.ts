/** How long after a pen was last near a touch is taken for the hand that holds it. */
const AFTER_PEN_MS = 700;
/** A touch wider than this is no fingertip, in CSS pixels. */
const PALM_PX = 70;

/** What a screen says of a touch. */
interface Touch {
  /** When it came, in the time of events. */
  readonly timeStamp: number;
  readonly width: number;
  readonly height: number;
}

/** Whether a touch is a palm laid on the screen: too broad, or beside a pen that is at work. */
export function isPalm({ timeStamp, width, height }: Touch, penSeenAt: number | undefined): boolean {
  if (Math.max(width, height) > PALM_PX) return true;
  return penSeenAt !== undefined && timeStamp - penSeenAt < AFTER_PEN_MS;
}
