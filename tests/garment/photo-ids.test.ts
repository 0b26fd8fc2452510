import { expect, it } from 'vitest';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { linden } from './linden';

it('photoIdsOf names the pictures of diagrams, fittings and the cover, each once', () => {
  const garment = linden();
  expect(photoIdsOf(garment)).toEqual(['photo-14', 'photo-15', 'photo-fitting', 'photo-plate']);
  expect(photoIdsOf({ ...garment, coverPhotoId: 'photo-15' })).toEqual(['photo-14', 'photo-15', 'photo-fitting']);
});
