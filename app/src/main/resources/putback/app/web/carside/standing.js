// How the car stands, by what was written down, whatever the plan would have by now.

import { button, clock, count, make } from './make.js';
import { called, low } from './parts.js';

const STANDS = { raised: 'raised', 'ride height': 'at ride height', 'on wheels': 'on its wheels' };

/** Raised, at ride height, on its wheels; empty where nobody wrote it down. */
export function stands(height) {
  return STANDS[height] ?? '';
}

/** Whether the car stands otherwise than a step is meant for. On its wheels it is at ride height too. */
export function unfit(step, height) {
  if (!height || step.do === 'height' || step.height === 'any') return false;
  return step.height !== height && !(step.height === 'ride height' && height === 'on wheels');
}

/** What keeps the car from being lowered on its wheels: the first part that is off, or fixing that is out; empty for nothing. */
function inTheWay(app) {
  const { plan } = app.sync.data;
  const off = [...app.car.off][0];
  if (off) return 'off is ' + low(called(plan, off));
  const out = [...app.car.joints.keys()].find((joint) => app.car.state(joint) === 'out');
  return out ? 'out is ' + low(called(plan, out)) : '';
}

/** Says so where the car stands otherwise, and what may be done; nothing where it stands as it should. */
export function otherwise(app, step) {
  const { height } = app.car;
  if (!unfit(step, height) || step.do === 'tighten') return null;
  const stuck = height === 'raised' ? inTheWay(app) : '';
  return make('div.beware', {},
    make('p', {}, 'By what was written down the car stands ' + stands(height) + '. This step is meant for a car ' + stands(step.height) + '.'),
    stuck ? make('p', {}, 'It must not be lowered now; ' + stuck + '.') : null,
    make('p', {}, step.do === 'break-loose' && height === 'raised'
      ? 'Done as it stands, somebody holds the wheel or the brake, and nobody pulls at a car on stands so that it rocks (common practice, no source). Else skip it, and say why.'
      : 'Do it as it stands only if that is safe; else skip it, and say why.'),
    button('It stands ' + stands(step.height), () => app.record([{
      by: app.by(), do: 'note', height: step.height, reason: 'The car stands ' + stands(step.height),
    }], step.n), 'quiet'));
}

/** The office changed what the job renews while somebody stood at the car. */
export function planChanged(app) {
  const { job, plan } = app.sync.data;
  const { car } = app;
  const planned = new Set(plan.steps.map((step) => step.joint).filter(Boolean));
  const beyond = [...car.joints.keys()].filter((joint) => !planned.has(joint) && car.state(joint) !== 'untouched');
  const by = [job.changedBy ? 'By ' + job.changedBy : '', job.changedAt ? 'at ' + clock(job.changedAt) : ''].filter(Boolean).join(' ');
  return make('section.panel', { 'aria-label': 'The plan was changed' },
    make('h1.do', {}, 'The plan was changed'),
    make('p.careful', {}, (by ? by + '. ' : '') + 'It renews now: ' + job.renewed + '. ' + count(car.toDo.length, 'step') + (car.toDo.length === 1 ? ' is' : ' are') + ' left.'),
    make('p.careful', {}, 'The car stands as it stood: ' + (stands(car.height) || 'nobody wrote down how') + '. What is written down stays written down.'),
    beyond.length ? make('p.beware', {}, 'Touched, and not in the plan any more: ' + beyond.map((joint) => called(plan, joint)).join('; ')
      + '. See what is owed, and close it from there.') : null,
    make('div.go-bar', {}, button('I have seen it', () => {
      app.planNews = false;
      app.close();
    }, 'main-go')));
}
