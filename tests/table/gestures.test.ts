import { beforeEach, describe, expect, it } from 'vitest';
import type { View } from '../../app/state/table-store';
import { type Contact, createGestures, type Gestures } from '../../app/table/gestures';
import type { PointerAt, PointerKind, Tool } from '../../app/table/tool';

let view: View;
let heard: string[];
let takes: boolean;
let handOnly: boolean;
let fingersMoveOnly: boolean;
let gestures: Gestures;

const say = (word: string) => (at: PointerAt) => {
  heard.push(`${word} ${Math.round(at.world.x)} ${Math.round(at.world.y)}`);
};
const tool: Tool = {
  cursor: 'crosshair',
  press(at) {
    if (!takes) return undefined;
    say('press')(at);
    return { move: say('move'), end: say('end'), cancel: () => heard.push('cancel') };
  },
  hover: (at) => heard.push(at ? `hover ${Math.round(at.world.x)} ${Math.round(at.world.y)}` : 'hover nowhere'),
  tap: say('tap'),
};

beforeEach(() => {
  view = { scale: 2, x: 0, y: 0 };
  heard = [];
  takes = true;
  handOnly = false;
  fingersMoveOnly = false;
  gestures = createGestures({
    view: () => view,
    setView: (next) => {
      view = next;
    },
    limits: () => ({ min: 0.1, max: 50 }),
    tool: () => tool,
    handOnly: () => handOnly,
    fingersMoveOnly: () => fingersMoveOnly,
  });
});

function at(x: number, y: number, kind: PointerKind = 'mouse', id = 1, button: Contact['button'] = 'main'): Contact {
  return { id, kind, screen: { x, y }, free: false, button };
}

describe('a drag of a tool', () => {
  it('hears press, the newest place once a frame, and the end', () => {
    gestures.down(at(20, 40));
    gestures.move(at(26, 44));
    gestures.move(at(30, 50));
    gestures.flush();
    gestures.flush();
    gestures.up(at(32, 52));
    expect(heard).toEqual(['press 10 20', 'move 15 25', 'end 16 26']);
    expect(gestures.doing()).toBe('nothing');
  });

  it('takes a trembling press for a press on the spot', () => {
    gestures.down(at(20, 40, 'touch'));
    gestures.move(at(24, 43, 'touch'));
    gestures.flush();
    gestures.up(at(24, 43, 'touch'));
    expect(heard).toEqual(['press 10 20', 'end 10 20']);
  });

  it('counts a release far off as a move, even when no move was heard', () => {
    gestures.down(at(20, 40));
    gestures.up(at(220, 140));
    expect(heard).toEqual(['press 10 20', 'end 110 70']);
  });

  for (const [ending, end] of [
    ['a cancelled pointer', () => gestures.cancel(1)],
    ['Escape, blur or the room closed', () => void gestures.cancelAll()],
    ['a second finger', () => gestures.down(at(300, 300, 'touch', 2))],
    ['a pen', () => gestures.down(at(310, 280, 'pen', 3))],
  ] as const) {
    it(`is taken back by ${ending}, once`, () => {
      gestures.down(at(20, 40, 'touch'));
      gestures.move(at(60, 90, 'touch'));
      end();
      gestures.flush();
      gestures.up(at(60, 90, 'touch'));
      gestures.cancel(1);
      expect(heard.filter((word) => word === 'cancel')).toEqual(['cancel']);
      expect(heard.some((word) => word.startsWith('end 30'))).toBe(false);
    });
  }

  it('is not disturbed by a palm beside the pen', () => {
    gestures.down(at(20, 40, 'pen'));
    gestures.down(at(300, 500, 'touch', 2));
    gestures.move(at(60, 90, 'pen'));
    gestures.flush();
    gestures.up(at(300, 500, 'touch', 2));
    gestures.up(at(60, 90, 'pen'));
    expect(heard).toEqual(['press 10 20', 'move 30 45', 'end 30 45']);
  });

  it('gives a finger a reach of 22 pixels and a mouse 8, whatever the scale', () => {
    expect(gestures.placed(at(1, 2, 'touch')).reach * view.scale).toBeCloseTo(22, 12);
    view = { scale: 0.3, x: 0, y: 0 };
    expect(gestures.placed(at(1, 2, 'mouse')).reach * view.scale).toBeCloseTo(8, 12);
  });
});

describe('moving the table', () => {
  it('is what a press does that the tool declines', () => {
    takes = false;
    gestures.down(at(20, 40));
    gestures.move(at(50, 30));
    expect(gestures.doing()).toBe('moving-table');
    gestures.up(at(50, 30));
    expect(view).toEqual({ scale: 2, x: 30, y: -10 });
    expect(heard).toEqual([]);
  });

  it('is not a tap, and a tap does not move the table', () => {
    takes = false;
    gestures.down(at(20, 40));
    gestures.up(at(21, 41));
    expect(heard).toEqual(['tap 10 20']);
    expect(view).toEqual({ scale: 2, x: 0, y: 0 });
  });

  it('is what the middle button, the hand and fingers beside a pen always do', () => {
    gestures.down(at(20, 40, 'mouse', 1, 'middle'));
    gestures.up(at(21, 40, 'mouse', 1, 'middle'));
    handOnly = true;
    gestures.down(at(20, 40));
    gestures.up(at(20, 40));
    handOnly = false;
    fingersMoveOnly = true;
    gestures.down(at(20, 40, 'touch', 5));
    gestures.up(at(20, 40, 'touch', 5));
    expect(heard).toEqual([]);
    gestures.down(at(20, 40, 'pen', 6));
    expect(heard).toEqual(['press 10 20']);
  });
});

describe('two fingers', () => {
  it('zoom about their middle and never reach the tool, nor does the one that stays', () => {
    gestures.down(at(100, 100, 'touch', 1));
    gestures.down(at(200, 100, 'touch', 2));
    gestures.move(at(50, 100, 'touch', 1));
    gestures.move(at(250, 100, 'touch', 2));
    expect(view).toEqual({ scale: 4, x: -150, y: -100 });
    gestures.up(at(250, 100, 'touch', 2));
    gestures.move(at(80, 140, 'touch', 1));
    expect(view).toEqual({ scale: 4, x: -120, y: -60 });
    gestures.up(at(80, 140, 'touch', 1));
    expect(heard).toEqual(['press 50 50', 'cancel']);
    expect(gestures.doing()).toBe('nothing');
  });

  it('leave nothing behind when a call takes both away', () => {
    gestures.down(at(100, 100, 'touch', 1));
    gestures.down(at(200, 100, 'touch', 2));
    gestures.cancel(1);
    gestures.cancel(2);
    gestures.down(at(40, 60, 'touch', 3));
    gestures.up(at(40, 60, 'touch', 3));
    expect(heard).toEqual(['press 50 50', 'cancel', 'press 20 30', 'end 20 30']);
  });
});

describe('a finger that rests', () => {
  it('aims from then on and presses where it is lifted, as finely as a mouse', () => {
    takes = false;
    gestures.down(at(100, 100, 'touch'));
    expect(gestures.rested(1)).toBe(true);
    gestures.move(at(120, 90, 'touch'));
    gestures.flush();
    expect(gestures.holder()?.screen).toEqual({ x: 120, y: 90 });
    gestures.up(at(122, 90, 'touch'));
    expect(heard).toEqual(['hover 50 50', 'hover 60 45', 'hover nowhere', 'tap 61 45']);
    expect(view).toEqual({ scale: 2, x: 0, y: 0 });
  });

  it('lifted over what can be taken hold of, presses it once and drags nothing', () => {
    takes = false;
    gestures.down(at(100, 100, 'touch'));
    gestures.rested(1);
    takes = true;
    gestures.up(at(130, 100, 'touch'));
    expect(heard.slice(-2)).toEqual(['press 65 50', 'end 65 50']);
  });

  it('does not aim once it has moved, while it drags, or for a mouse', () => {
    takes = false;
    gestures.down(at(100, 100, 'touch'));
    gestures.move(at(140, 100, 'touch'));
    expect(gestures.rested(1)).toBe(false);
    gestures.up(at(140, 100, 'touch'));
    gestures.down(at(100, 100));
    expect(gestures.rested(1)).toBe(false);
    gestures.up(at(100, 100));
    takes = true;
    gestures.down(at(100, 100, 'touch'));
    expect(gestures.rested(1)).toBe(false);
  });

  it('gives up its aim to a second finger and to whatever else ends a press', () => {
    takes = false;
    for (const end of [() => gestures.down(at(300, 300, 'touch', 2)), () => gestures.cancel(1), gestures.cancelAll]) {
      gestures.cancelAll();
      heard = [];
      gestures.down(at(100, 100, 'touch'));
      gestures.rested(1);
      end();
      gestures.up(at(100, 100, 'touch'));
      expect(heard).toEqual(['hover 50 50', 'hover nowhere']);
    }
  });
});
