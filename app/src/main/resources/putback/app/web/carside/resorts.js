// It will not move: which way, then what to try, in the order that costs least, with the minutes running.

import { button, make } from './make.js';
import { called, low } from './parts.js';
import { panel } from './panels.js';

const WAYS = [
  ['stuck', 'It does not turn at all'],
  ['spins', 'Stud or bolt turns with it'],
  ['rounds', 'The hexagon rounds'],
  ['in bore', 'Nut is off, bolt stays in its bore'],
  ['snapped', 'It snapped'],
];
const STOP_MINUTES = 10;
const STOP_TRIES = 2;

/** Asks which way it refuses. */
export function wontMove(app, step) {
  const { plan, resorts } = app.sync.data;
  const known = resorts[step?.joint];
  if (!known) return panel(app, 'It will not move', make('p.careful', {}, 'This step opens no fixing. Go to the step that does.'));
  return panel(app, low(called(plan, step.joint)).replace(/^./, (c) => c.toUpperCase()) + ' will not move',
    make('p.careful', {}, 'Which way does it refuse?'),
    make('div.list', {}, WAYS.filter(([way]) => way in known).map(([way, words]) => button(words, () => {
      app.stuck = { step, way, since: Date.now(), tried: [] };
      app.open('resorts', step);
    }))));
}

/** The row of resorts; each is ticked as tried, or it worked. */
export function resorts(app) {
  const { plan, resorts: known, rows } = app.sync.data;
  const { step, way, since, tried } = app.stuck;
  const row = rows[known[step.joint][way]];
  const running = make('p.running', { role: 'timer' });
  const stop = make('p.beware', { role: 'status' });
  const beat = () => {
    const minutes = (Date.now() - since) / 60000;
    running.textContent = Math.floor(minutes) + ':' + String(Math.floor(minutes * 60) % 60).padStart(2, '0') + ' on it so far';
    const over = tried.length >= STOP_TRIES || minutes >= STOP_MINUTES;
    stop.textContent = over && way !== 'snapped' ? 'Stop here: photograph it, decide whether it is kept or scrapped, and tell whoever speaks with the customer. (Two resorts or ten minutes: common practice, no source.)' : '';
  };
  beat();
  app.beating = setInterval(beat, 1000);
  return panel(app, called(plan, step.joint) + ': ' + way, running, stop,
    (row.cautions ?? []).map((one) => make('p.careful', {}, one)),
    make('ol.resorts', {}, row.tries.map((one, i) => tries(app, one, i))),
    row.certain ? null : make('p.careful', {}, 'If none of them works it is a matter to decide: a new price, and a new yes from the customer.'),
    row.leftOut.filter((one) => one.banned).map((one) => make('div.careful', {}, 'Not here: ' + words(one.resort),
      make('ul', {}, (one.reasons ?? [one.because]).map((reason) => make('li', {}, reason))))),
    make('div.go-bar', {}, button('It moved', () => moved(app), 'main-go')));
}

const words = (id) => id.replaceAll('-', ' ');

function tries(app, one, i) {
  const { tried } = app.stuck;
  const chance = Math.round(one.chance * 100);
  const label = words(one.resort) + ', ' + one.minutes + ' min' + (chance >= 100 ? ', sure to work' : ', works ' + chance + ' times in 100');
  return make('li' + (tried.includes(one.resort) ? '.tried' : ''), {},
    make('span', {}, (i + 1) + '. ' + label),
    tried.includes(one.resort) ? make('b', {}, 'tried') : button('Tried', () => {
      tried.push(one.resort);
      app.note(app.stuck.step, 'Will not move (' + app.stuck.way + '): tried ' + words(one.resort) + ', no');
      app.open('resorts', app.stuck.step);
    }));
}

function moved(app) {
  const { step, way, since, tried } = app.stuck;
  const minutes = Math.max(1, Math.round((Date.now() - since) / 60000));
  const last = tried.length ? ' after ' + tried.map(words).join(', ') : '';
  app.note(step, 'Moved (' + way + ')' + last + ', ' + minutes + ' min');
  app.stuck = null;
  app.close();
}
