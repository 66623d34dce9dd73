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
      app.note(step, 'Will not move (' + way + ')');
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
  const out = row.leftOut.filter((one) => one.banned);
  return panel(app, called(plan, step.joint) + ': ' + way, running, stop,
    [...new Set([...never(app, step.joint), ...(row.cautions ?? []).map((one) => bySheet(app, step.joint, one))])].map((caution) => make('p.beware', {}, caution)),
    make('ol.resorts', {}, row.tries.map((one, i) => tries(app, one, i, one.resort === 'penetrant' && row.tries.slice(0, i).some((before) => before.resort === 'heat')))),
    make('div.go-bar', {}, button('It stands still: somebody has to decide', () => app.record([{
      by: app.by(), do: 'note', joint: step.joint, reason: 'Stopped (' + way + '): ' + (tried.length ? 'tried ' + tried.map(words).join('; ') : 'nothing tried'),
    }], null, 'stopped'), 'quiet')),
    row.certain ? null : make('p.careful', {}, 'If none of them works it is a matter to decide: a new price, and a new yes from the customer.'),
    [...grouped(out)].map(([because, ids]) => make('p.careful', {}, 'Not here: ' + ids.map(words).join('; ') + '. Why: ' + because + '.')),
    make('div.go-bar', {}, button('It moved by something else', () => moved(app), 'quiet')));
}

/** It is known at the desk now; what comes next is the price, or a call. */
export function stopped(app) {
  return panel(app, 'It stands still', make('p.careful', {}, 'The page of the job and the day say so until it is undone or moves. What comes next is a price for more, or a call.'),
    make('div.list', {}, make('a.button', { href: '/job/' + app.job + '#scope' }, 'To the price'), make('a.button', { href: '/job/' + app.job + '#approvals' }, 'To the owner’s word and number')));
}

const NAMES = {
  'wire-brush': 'wire-brush the thread', penetrant: 'penetrant, and let it soak', rock: 'rock it to and fro', hammer: 'hammer on the flat',
  grip: 'grip the stud', heat: 'heat it', cut: 'cut it', press: 'press it out', 'cut-both-sides': 'cut it on both sides',
  'weld-nut-on': 'weld a nut on', drill: 'drill it out',
};
const ENERGY = /^(Gas under pressure|Spring under load|Bar under twist|Airbag|High voltage)/;

const words = (id) => NAMES[id] ?? id.replaceAll('-', ' ');

/** What the steps at the same parts say of stored energy, once each: it holds for heat, saw and drill too. */
function never(app, joint) {
  const { plan, near } = app.sync.data;
  const parts = new Set(near?.[joint]?.joins ?? []);
  const same = (step) => step.joint === joint || near?.[step.joint]?.joins.some((part) => parts.has(part));
  return [...new Set(plan.steps.filter((step) => step.joint && same(step)).flatMap((step) => step.cautions).filter((one) => ENERGY.test(one)))];
}

const NOBODY = 'Nobody has said what is near. ';

/** What the sheet has at a fixing counts as said: its parts, and the hoses and wires tied to those. */
function bySheet(app, joint, caution) {
  const { plan, near } = app.sync.data;
  const at = [...(near?.[joint]?.joins ?? []), ...(near?.[joint]?.tied ?? [])].map((part) => low(called(plan, part)));
  return at.length && caution.startsWith(NOBODY) ? 'By the sheet there is at it: ' + at.join('; ') + '. ' + caution.slice(NOBODY.length) : caution;
}

/** What is not to be done here, by all the reasons why. */
function grouped(out) {
  const by = new Map();
  for (const one of out) {
    const because = (one.reasons ?? [one.because]).join('; ');
    by.set(because, [...(by.get(because) ?? []), one.resort]);
  }
  return by;
}

/** 0.35 as about 1 time in 3, 0.6 as about 6 times in 10. */
function often(chance) {
  if (chance >= 0.995) return ', always works';
  const tenths = Math.min(9, Math.max(1, Math.round(chance * 10)));
  return ', works about ' + (chance < 0.5 ? '1 time in ' + Math.round(1 / Math.max(chance, 0.01)) : tenths + ' times in 10');
}

/** Whether a figure is the garage's own or taken for granted. */
function evidence(app, resort) {
  const own = app.sync.data.ownTries?.[resort] ?? 0;
  return own ? ' (your own ' + own + ' of these)' : ' (assumption)';
}

const HOT = 'Penetrant burns: not on what is still hot. Let it cool until a hand can stay on it.';

function tries(app, one, i, afterHeat) {
  const { tried } = app.stuck;
  const label = words(one.resort) + ', ' + one.minutes + ' min' + often(one.chance) + evidence(app, one.resort);
  return make('li' + (tried.includes(one.resort) ? '.tried' : ''), {},
    make('span', {}, (i + 1) + '. ' + label),
    afterHeat ? make('p.beware', {}, HOT) : null,
    tried.includes(one.resort) ? make('b', {}, 'tried') : [button('Tried', () => {
      tried.push(one.resort);
      noteTry(app, one.resort, 'no');
      app.open('resorts', app.stuck.step);
    }), button('It moved', () => {
      noteTry(app, one.resort, 'yes');
      done(app);
    })]);
}

/** What a try came to, in the form that the garage learns from: docs/carside.md. */
function noteTry(app, resort, worked) {
  app.note(app.stuck.step, 'Will not move (' + app.stuck.way + '): tried ' + resort + ', ' + worked);
}

function moved(app) {
  app.note(app.stuck.step, 'Moved (' + app.stuck.way + ')');
  done(app);
}

function done(app) {
  app.stuck = null;
  app.close();
}
