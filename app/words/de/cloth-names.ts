import type * as english from '../en/cloth-names';
import type { Said } from '../said';

export const clothNames: Said<typeof english.clothNames> = {
  cloth: (name) => name.trim() || 'Stoff ohne Namen',
  laid(id, pieces, strips) {
    const [own, ...parts] = id.split('/');
    const piece = pieces.find((one) => one.id === own);
    const strip = strips.find((one) => one.id === own);
    const name = piece
      ? piece.name || 'Teil ohne Namen'
      : strip
        ? strip.name || 'Streifen'
        : 'Ein Teil, das es nicht mehr gibt';
    const other = parts.includes('mirrored') ? ', gegengleich' : '';
    return `${name}${other}${parts.includes('pieced') ? ', angestücktes Stück' : ''}`;
  },
};
