import type { Change } from './change';
import { bandChange } from './changes/band';
import { baseChange } from './changes/base';
import { dartAwayChange } from './changes/dart-away';
import { fullnessChange } from './changes/fullness';
import { hangChange } from './changes/hang';
import { lengthenChange } from './changes/lengthen';
import { moveDartChange } from './changes/move-dart';
import { newDartChange } from './changes/new-dart';
import { sidesApartChange } from './changes/sides-apart';
import { slashChange } from './changes/slash';
import { splitDartChange } from './changes/split-dart';
import { stripChange } from './changes/strip';
import { takeInChange } from './changes/take-in';
import { waistChange } from './changes/waist';

interface Group {
  readonly group: 'length' | 'width' | 'darts' | 'waist' | 'pieces';
  readonly changes: readonly Change[];
}

/** Every change, in the groups in which it is offered. */
export const GROUPS: readonly Group[] = [
  { group: 'length', changes: [lengthenChange] },
  { group: 'width', changes: [takeInChange, slashChange, fullnessChange] },
  { group: 'darts', changes: [newDartChange, moveDartChange, splitDartChange, dartAwayChange] },
  { group: 'waist', changes: [waistChange, hangChange] },
  { group: 'pieces', changes: [baseChange, bandChange, stripChange, sidesApartChange] },
];
