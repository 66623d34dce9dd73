// One step in large type, with what the hand needs for it.

import { button, clock, fill, make } from './make.js';
import { isLook } from './fold.js';
import { brokeHere, newFirst } from './broken.js';
import { otherwise } from './standing.js';
import { both, events, field, number, place, tick, words } from './parts.js';

/** The card of a step. `app` is the page; a step that is done can only be taken back. */
export function card(app, step) {
  const { cards } = app.sync.data;
  const own = cards[step.n];
  const done = app.doneBy(step);
  const text = words(step, own);
  const body = make('article.card', { 'data-n': step.n, 'data-do': step.do },
    make('p.place', {}, place(step, own, app.car.height), make('span.far', {}, 'Step ' + step.n + ' of ' + app.sync.data.plan.steps.length)),
    make('h1.do', {}, text.head),
    own.tools ? make('p.tools', {}, make('b', {}, 'Tool '), own.tools) : null,
    torque(app, step, own, text.rest));
  if (done) {
    body.append(...undoable(app, step, done));
    return body;
  }
  const broken = brokeHere(app, step);
  if (broken.length && (step.do === 'offer-up' || step.do === 'start')) {
    body.append(newFirst(app, step, broken), make('div.go-bar', {}, button('Back', () => app.back(step), 'quiet')));
    return body;
  }
  const gate = new Gate(app, step);
  body.append(...broken.map((one) => make('p.beware', {}, one.words)));
  body.append(otherwise(app, step) ?? '');
  body.append(...cautions(step, own, gate), ...passes(step, gate));
  if (step.do === 'tighten') body.append(...reading(app, step, own, gate));
  else if (step.do === 'second-look') body.append(...look(app, step, gate));
  else if (step.do === 'start' && step.fasteners === 'new') body.append(...newOne(app, step, gate));
  else gate.done('Done', () => app.record([events(step, app.by())]));
  body.append(gate.notice, make('div.go-bar', {}, button('Back', () => app.back(step), 'quiet'), gate.button),
    gate.second ? make('div.go-bar', {}, gate.second) : '');
  return body;
}

/** Keeps the button shut until everything that has to be ticked is. */
class Gate {
  constructor(app, step) {
    this.app = app;
    this.step = step;
    this.needed = [];
    this.notice = make('p.notice', { role: 'status' });
    this.button = button('Done', () => this.press(), 'main-go');
    this.second = null;
    this.work = () => {};
  }

  ticked(key) {
    return this.app.ticks.has(this.step.n + ' ' + key);
  }

  /** A tick without which the step is not done. */
  tick(key, label, kind) {
    this.needed.push(key);
    return tick(label, this.ticked(key), (on) => {
      if (on) this.app.ticks.add(this.step.n + ' ' + key);
      else this.app.ticks.delete(this.step.n + ' ' + key);
      fill(this.notice);
    }, kind);
  }

  done(label, work) {
    this.button.textContent = label;
    this.work = work;
  }

  press() {
    if (this.isOpen()) this.work();
  }

  isOpen() {
    const open = this.needed.filter((key) => !this.ticked(key));
    if (open.length) this.say('Tick what is marked first: ' + open.length + (open.length === 1 ? ' is' : ' are') + ' open.');
    return open.length === 0;
  }

  say(text) {
    fill(this.notice, text);
    this.notice.scrollIntoView({ block: 'center' });
  }
}

function torque(app, step, own, rest) {
  if (step.do !== 'tighten') return null;
  const at = { 'ride height': 'at ride height', 'on wheels': 'on its wheels', raised: 'car raised' }[step.tightenAt] ?? '';
  const stands = app.car.height;
  const wrong = step.tightenAt === 'on wheels' ? stands !== 'on wheels'
    : step.tightenAt === 'ride height' && stands === 'raised';
  return make('div.torque-box', {},
    make('p.figure', {}, own.torque || 'By hand', at ? make('small', {}, ' ' + at) : null),
    step.angleDeg ? make('p.angle', {}, 'then ' + step.angleDeg + '° on') : null,
    own.wrench.map((line) => make('p', {}, line[0].toUpperCase() + line.slice(1))),
    rest ? make('p', {}, rest) : null,
    own.source && !rest.includes(own.source) ? make('p', {}, 'Source: ' + own.source) : null,
    wrong ? make('p.beware', {}, stands
      ? 'By what was written down the car stands ' + (stands === 'ride height' ? 'at ride height' : stands) + ' now. This is tightened ' + at + '.'
      : 'Nobody wrote down how the car stands. This is tightened ' + at + '.') : null);
}

function cautions(step, own, gate) {
  if (!step.cautions.length) return [];
  return [make('div.cautions-at', {}, step.cautions.map((caution, i) => (own.stops[i]
    ? gate.tick('caution ' + i, caution, 'stop')
    : make('p.careful', {}, caution))))];
}

/** A tightening in several passes has a tick for each, and so has the angle. */
function passes(step, gate) {
  const stages = step.stages ?? [];
  const ticks = stages.map((stage, i) => gate.tick('pass ' + i, stage));
  const angle = step.angleDeg && !stages.some((stage) => stage.includes(step.angleDeg + '°'));
  if (angle) ticks.push(gate.tick('angle', 'Turned on by ' + step.angleDeg + '°'));
  return ticks.length ? [make('div.passes', {}, ticks)] : [];
}

/** The torque is accepted as it is asked for, or typed as it was read. */
function reading(app, step, own, gate) {
  const wrench = step.wrench?.id;
  const extra = (torqueNm) => ({
    ...(Number.isFinite(torqueNm) ? { torqueNm } : {}),
    ...(step.angleDeg ? { angleDeg: step.angleDeg } : {}),
    ...(wrench ? { wrench } : {}),
  });
  if (own.unknown) return lookedUp(app, step, gate);
  if (step.torqueNm === null) {
    gate.done('Tight', () => app.record([events(step, app.by(), {})]));
    return [];
  }
  const typed = field('Read on the wrench, in N·m, if it is another figure', { inputmode: 'decimal', name: 'torque' });
  const value = () => (typed.input.value.trim() === '' ? step.torqueNm : number(typed.input.value));
  typed.input.addEventListener('input', () => {
    gate.sure = false;
    gate.button.textContent = Number.isFinite(value()) ? 'Tight: ' + both(value()) : 'Tight';
  });
  gate.done('Tight: ' + both(step.torqueNm), () => {
    const read = value();
    if (!Number.isFinite(read) || read <= 0 || read > 5000) return gate.say('“' + typed.input.value.trim() + '” is no torque in N·m. Write the figure that the wrench showed, or press No reading.');
    const [least, most] = step.windowNm ?? [0, Infinity];
    if ((read < least || read > most) && !gate.sure) {
      gate.sure = true;
      gate.button.textContent = 'Write it down all the same';
      return gate.say(both(read) + ' is outside ' + both(least) + ' to ' + both(most) + '. Look again; the job will owe this.');
    }
    return app.record([events(step, app.by(), extra(read))]);
  });
  gate.second = button('No reading', () => gate.isOpen() && app.open('untorqued', step), 'quiet');
  return [typed.shown];
}

/** Nobody has said how tight: the figure is looked up and has a source, or it is written down that there was none. */
function lookedUp(app, step, gate) {
  const typed = field('Looked up, in N·m', { inputmode: 'decimal', name: 'looked-up' });
  const source = field('Where it stands: book and page', { name: 'source', maxlength: 200 });
  const none = () => typed.input.value.trim() === '' && source.input.value.trim() === '';
  const label = () => (none() ? WITHOUT : Number.isFinite(number(typed.input.value)) ? 'Tight: ' + both(number(typed.input.value)) : 'Tight');
  for (const one of [typed, source]) one.input.addEventListener('input', () => { gate.button.textContent = label(); });
  let keep = true;
  gate.done(WITHOUT, () => {
    if (none()) return app.record([events(step, app.by(), { reason: 'tight without a figure: its torque is not known' })]);
    const read = number(typed.input.value);
    const where = source.input.value.trim();
    if (!Number.isFinite(read) || read <= 0 || read > 5000) return gate.say('Write the figure in N·m as it stands in the book.');
    if (where === '') return gate.say('Say where the figure stands. One without a source is not kept.');
    const note = { by: app.by(), do: 'note', joint: step.joint, reason: 'Looked up: ' + read + ' N·m; ' + where };
    return app.record([events(step, app.by(), { torqueNm: read, reason: 'looked up: ' + where }), ...(keep ? [note] : [])]);
  });
  return [typed.shown, source.shown, tick('Keep it on the car’s sheet for the next job', true, (on) => { keep = on; })];
}

const WITHOUT = 'Tight, without a figure';

/** By another person, or by the same one ten minutes later with fresh light. */
function look(app, step, gate) {
  const closed = app.closed(step.joint);
  const mine = { at: new Date().toISOString(), by: app.by() };
  const may = isLook(closed, mine);
  const who = closed ? 'Tightened by ' + closed.by + ' at ' + clock(closed.at) + '.' : 'Not tightened yet.';
  if (may) {
    gate.done('Looked: it is tight', () => app.record([events(step, app.by())]));
    return [make('p.careful', {}, who)];
  }
  const after = closed ? clock(Date.parse(closed.at) + 600000) : '';
  gate.done('Another person looks', () => (closed ? app.open('second', step) : gate.say('It has to be tight first.')));
  gate.second = button('Later', () => app.skip(step, 'a second look comes later'), 'quiet');
  return [make('p.careful', {}, who + (after ? ' By yourself it counts from ' + after + ' on.' : ''))];
}

/** A fastener that is used once: the page asks whether the new one went in. */
function newOne(app, step, gate) {
  gate.done('New one in, started', () => app.record([
    { by: app.by(), do: 'replace-fastener', joint: step.joint }, events(step, app.by())]));
  gate.second = button('The old one went back', () => gate.isOpen() && app.record([events(step, app.by())]), 'quiet');
  return [];
}

function undoable(app, step, done) {
  const said = [done.by, clock(done.at), done.torqueNm ? both(done.torqueNm) : ''].filter(Boolean).join(', ');
  return [make('p.was-done', {}, 'Done: ' + said),
    make('div.go-bar', {}, button('Back', () => app.back(step), 'quiet'), button('Next', () => app.onward(step), 'main-go')),
    make('div.go-bar', {}, button('That was wrong, take it back', () => app.open('takeBack', step), 'quiet'))];
}
