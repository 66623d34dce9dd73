// The small ladder: down the left rail apart, up the right rail together, a rung for each fixing. Shape says how it stands.

import { draw } from './make.js';
import { called } from './parts.js';

const WIDE = 300;
const ROW = 42;
const LEFT = 26;
const RIGHT = WIDE - 26;

/** Drawn for the car as it stands; `here` is the joint of the step on the card. */
export function ladder(plan, car, here) {
  const joints = plan.steps.filter((step) => step.do === 'undo').map((step) => step.joint);
  const once = new Set(plan.steps.filter((step) => step.fasteners === 'new').map((step) => step.joint));
  const critical = new Set(plan.steps.filter((step) => step.do === 'second-look').map((step) => step.joint));
  const high = joints.length * ROW + 20;
  const words = counts(joints, car);
  const svg = draw('svg', { viewBox: '0 0 ' + WIDE + ' ' + high, class: 'mini', role: 'img', 'aria-label': words });
  svg.append(line(LEFT, 4, LEFT, high - 4, 'rail'), line(RIGHT, 4, RIGHT, high - 4, 'rail'));
  joints.forEach((joint, i) => {
    const y = 34 + i * ROW;
    const row = draw('g', { class: joint === here ? 'row here' : 'row' });
    row.append(line(LEFT + 12, y, RIGHT - 12, y, 'rung'));
    row.append(draw('text', { x: WIDE / 2, y: y - 8 }, short(called(plan, joint))));
    marks(row, still(car, joint), y, once.has(joint), critical.has(joint));
    if (joint === here) row.append(draw('path', { d: 'M2 ' + (y - 9) + 'l9 9l-9 9z', class: 'pointer' }));
    svg.append(row);
  });
  return svg;
}

function counts(joints, car) {
  const states = joints.map((joint) => car.state(joint));
  const of = (...which) => states.filter((state) => which.includes(state)).length;
  return 'The ladder: ' + of('untouched') + ' untouched, ' + of('out') + ' open, ' + of('started', 'loose on purpose')
    + ' on and not tight, ' + of('final', 'marked') + ' tight.';
}

const short = (name) => (name.length > 32 ? name.slice(0, 31) + '…' : name);

const line = (x1, y1, x2, y2, kind) => draw('line', { x1, y1, x2, y2, class: kind });

/** On the left how it came apart, on the right how it went together. */
function marks(row, state, y, once, critical) {
  const loose = state === 'loose on purpose';
  const on = state === 'untouched' || state === 'broken loose';
  if (on) nut(row, LEFT, y, state === 'untouched');
  else hole(row, LEFT, y);
  if (on || state === 'out') hole(row, RIGHT, y, on);
  else if (state === 'started' || loose) nut(row, RIGHT, y, false);
  else nut(row, RIGHT, y, true);
  if (once && !on) row.append(draw('circle', { cx: RIGHT, cy: y, r: 14, class: 'ring' }));
  if (critical && state !== 'marked') row.append(draw('path', { d: diamond(RIGHT - 24, y), class: 'look' }));
  if (state === 'marked') row.append(draw('path', { d: diamond(RIGHT - 24, y), class: 'looked' }));
}

/** Broken loose and not undone yet: the nut still sits on the left. */
function still(car, joint) {
  const was = car.joints.get(joint);
  return was?.loosened && !was.opened && !was.started ? 'broken loose' : car.state(joint);
}

const diamond = (x, y) => 'M' + x + ' ' + (y - 6) + 'l6 6l-6 6l-6-6z';

function hole(row, x, y, faint = false) {
  row.append(draw('circle', { cx: x, cy: y, r: 9, class: faint ? 'hole faint' : 'hole' }));
}

/** A nut on its thread stands off its face; one that is down is solid. */
function nut(row, x, y, down) {
  if (down) {
    row.append(draw('rect', { x: x - 8, y: y - 9, width: 16, height: 18, class: 'nut down' }));
    row.append(line(x - 8, y - 3, x + 8, y - 3, 'facet'), line(x - 8, y + 3, x + 8, y + 3, 'facet'));
  } else {
    row.append(draw('rect', { x: x - 3, y: y - 9, width: 6, height: 18, class: 'thread' }));
    row.append(line(x - 10, y + 10, x + 10, y + 10, 'face'));
    row.append(draw('rect', { x: x - 8, y: y - 10, width: 16, height: 9, class: 'nut' }));
  }
}
