import type { Change } from './change';
import { moveDartChange } from './changes/move-dart';
import { stripChange } from './changes/strip';
import { takeInChange } from './changes/take-in';

/** Every change, in the groups in which it is offered. */
export const GROUPS = [
  { group: 'width', changes: [takeInChange] },
  { group: 'darts', changes: [moveDartChange] },
  { group: 'pieces', changes: [stripChange] },
] as const satisfies readonly {
  readonly group: 'length' | 'width' | 'darts' | 'waist' | 'pieces';
  readonly changes: readonly Change[];
}[];
