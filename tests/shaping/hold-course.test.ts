import { expect, it } from 'vitest';
import { linesThrough } from '../../core/seams/corner-place';
import { heldFrom, NEAR, placesOf } from '../../core/shaping/hold-course';
import { at } from '../seams/pieces';

/** An edge of 300 and then 400 mm, round a right angle. */
const path = linesThrough(at(5, 9), at(305, 9), at(305, 409));

it('placesOf gives points of the edge in order along it', () => {
  expect(placesOf(path, [40, 350])).toEqual([
    { point: { x: 45, y: 9 }, along: 40 },
    { point: { x: 305, y: 59 }, along: 350 },
  ]);
});

it('heldFrom pins the course closely at first, then wider, up to half an inch from the end', () => {
  expect(heldFrom(path, 120, []).map(({ along }) => along)).toEqual([120, 135, 170, 270]);
  expect(heldFrom(path, 600, []).map(({ along }) => along)).toEqual([600, 615, 650]);
  expect(heldFrom(path, 700 - NEAR, [])).toEqual([]);
});

it('heldFrom keeps the points already there and sets no pin beside one', () => {
  const kept = placesOf(path, [130, 400]);
  expect(heldFrom(path, 120, kept).map(({ along }) => along)).toEqual([130, 170, 270, 400]);
});
