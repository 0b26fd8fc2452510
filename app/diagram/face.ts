import type { PhotoPoint, Point } from '../../core/geometry/point';

/** One way of showing a picture: how its pixels lie in the world of the canvas, and back. */
export interface Face {
  readonly kind: 'photo' | 'squared';
  /** `undefined` beyond the horizon. */
  toWorld(photo: PhotoPoint): Point | undefined;
  toPhoto(world: Point): PhotoPoint | undefined;
}

/** The picture as the camera saw it: its own pixels are the world. */
export const photoFace: Face = {
  kind: 'photo',
  toWorld: (photo) => photo,
  toPhoto: (world) => ({ x: world.x, y: world.y }),
};
