import { describe, expect, it } from 'vitest';
import { isPalm } from '../../app/table/palm';

const fingertip = { timeStamp: 5000, width: 23, height: 31 };

describe('isPalm', () => {
  it('takes a fingertip for a finger where no pen has been near', () => {
    expect(isPalm(fingertip, undefined)).toBe(false);
  });

  it('takes any touch beside a pen for the hand that holds it, until a little after', () => {
    expect(isPalm(fingertip, 4990)).toBe(true);
    expect(isPalm(fingertip, 4400)).toBe(true);
    expect(isPalm(fingertip, 4200)).toBe(false);
  });

  it('takes what is broader than any fingertip for a palm', () => {
    expect(isPalm({ ...fingertip, height: 110 }, undefined)).toBe(true);
  });
});
