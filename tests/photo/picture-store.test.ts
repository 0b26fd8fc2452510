import { beforeEach, describe, expect, it } from 'vitest';
import type { FlatPictureShown, ReadyPicture } from '../../app/photo/picture-store';
import { picturesOf, putPictures, usePictures } from '../../app/photo/picture-store';
import { useGarment } from '../../app/state/garment-store';
import type { Diagram } from '../../core/garment/diagram';
import { newGarment } from '../../core/garment/new-garment';

let closed: string[];
const bitmap = (name: string) => ({ close: () => closed.push(name) }) as unknown as ImageBitmap;
const photo = (...names: string[]) => ({ levels: names.map(bitmap) }) as unknown as ReadyPicture;
const flat = (...names: string[]) => ({ levels: names.map(bitmap) }) as unknown as FlatPictureShown;

beforeEach(() => {
  closed = [];
  usePictures.setState({ byDiagram: {} });
});

describe('putPictures', () => {
  it('closes the bitmaps that are replaced and none that stay', () => {
    const taken = photo('photo', 'half photo');
    putPictures('plate', { photo: taken, flat: flat('quick look') });
    putPictures('plate', { photo: taken, flat: flat('full', 'half') });
    expect(closed).toEqual(['quick look']);
    putPictures('plate', { photo: photo('other photo') });
    expect(closed.sort()).toEqual(['full', 'half', 'half photo', 'photo', 'quick look']);
  });

  it('leaves the pictures of other diagrams alone', () => {
    putPictures('plate', { photo: photo('a') });
    putPictures('other plate', { photo: photo('b') });
    expect(picturesOf('plate').photo).toBeDefined();
    expect(closed).toEqual([]);
  });
});

describe('pictures of diagrams that leave the table', () => {
  it('are closed and forgotten, and those of diagrams that stay are not', () => {
    let ids = 0;
    const garment = newGarment({ newId: () => `id ${ids++}`, today: '2024-03-05', name: 'Apron', shownIn: 'cm' });
    const diagrams = ['plate', 'other plate'].map((id) => ({ id }) as Diagram);
    useGarment.getState().open({ ...garment, diagrams });
    putPictures('plate', { photo: photo('a') });
    putPictures('other plate', { photo: photo('b') });
    useGarment.getState().edit('take off', (now) => ({ ...now, diagrams: now.diagrams.slice(1) }));
    expect(closed).toEqual(['a']);
    expect(Object.keys(usePictures.getState().byDiagram)).toEqual(['other plate']);
    useGarment.getState().close();
    expect(closed).toEqual(['a', 'b']);
  });
});
