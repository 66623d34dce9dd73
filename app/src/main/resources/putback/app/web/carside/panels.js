// What interrupts a step: something found, a note, something broken, a call, another order.

import { signedIn } from './device.js';
import { button, clock, count, make } from './make.js';
import { isSame, remaining } from './fold.js';
import { called, events, field, low, tick } from './parts.js';
import { stands } from './standing.js';

/** The panel with its own heading and a way back; nothing is written before its button is pressed. */
export function panel(app, heading, ...content) {
  return make('section.panel', { 'aria-label': heading },
    make('h1.do', {}, heading), content, make('div.go-bar', {}, button('Back to the step', () => app.close(), 'quiet')));
}

/** Asks for words, then goes on with them. */
function asks(app, heading, label, go, work, already = '') {
  const words = field(label, { rows: 3, name: 'words' }, true);
  words.input.value = already;
  const notice = make('p.notice', { role: 'status' });
  return panel(app, heading, words.shown, notice, make('div.go-bar', {}, button(go, () => {
    const said = words.input.value.trim();
    if (said === '') notice.textContent = 'Say it in a word or two.';
    else work(said.slice(0, 1000));
  }, 'main-go')));
}

const about = (step) => Object.fromEntries(['joint', 'part', 'followUp'].filter((key) => step?.[key]).map((key) => [key, step[key]]));

export function note(app, step) {
  return asks(app, 'Note', 'What is to be remembered', 'Keep the note',
    (said) => app.record([{ by: app.by(), do: 'note', ...about(step), reason: said }]));
}

export function skip(app, step) {
  return asks(app, 'Skip this step', 'Why it is left out for now', 'Skip it', (said) => app.skip(step, said));
}

export function untorqued(app, step) {
  return asks(app, 'Tight, without a reading', 'Why there is no reading', 'Write it down so',
    (said) => app.record([events(step, app.by(), { untorqued: said })]));
}

export function takeBack(app, step) {
  return asks(app, 'Take it back', 'What was wrong', 'Take it back',
    (said) => app.record([{ by: app.by(), do: 'correct', corrects: app.doneBy(step).id, reason: said }], step.n), 'ticked by mistake');
}

/** A second person says who he is. */
export function second(app, step) {
  if (signedIn()) return panel(app, 'A second look', make('p.careful', {}, step.text),
    make('p.careful', {}, 'You are signed in as ' + app.by() + '. Whoever looks signs in on a device of their own, or here after you, so that it is their look.'));
  const name = field('Who looks', { name: 'who', maxlength: 60 });
  const notice = make('p.notice', { role: 'status' });
  const closed = app.closed(step.joint);
  return panel(app, 'A second look', make('p.careful', {}, step.text), name.shown, notice,
    make('div.go-bar', {}, button('Looked: it is tight', () => {
      const who = name.input.value.trim();
      if (who === '') notice.textContent = 'Write who looks.';
      else if (isSame(who, closed?.by ?? '')) notice.textContent = who + ' tightened it. Somebody else looks, or the same one ten minutes later.';
      else app.record([events(step, who)]);
    }, 'main-go')));
}

export function found(app, step) {
  let urgency = 'soon';
  const words = field('What, and where', { rows: 3, name: 'words' }, true);
  const notice = make('p.notice', { role: 'status' });
  const choices = [['stop driving', 'Stop driving'], ['soon', 'Soon'], ['watch', 'Watch']].map(([value, label]) => make('label.big-tick', {},
    make('input', { type: 'radio', name: 'urgency', value, checked: value === urgency, onchange: () => { urgency = value; } }), make('span', {}, label)));
  return panel(app, 'Found something', words.shown,
    make('fieldset.choices', {}, make('legend', {}, 'How urgent'), choices), notice,
    make('div.go-bar', {}, button('Write it down', () => {
      const said = words.input.value.trim();
      if (said === '') notice.textContent = 'Say what it is.';
      else app.record([{ by: app.by(), do: 'note', ...about(step), reason: 'Found, ' + urgency + ': ' + said.slice(0, 1000) }]);
    }, 'main-go')));
}

/** What may break here: the fixing of the step, the parts at it, the hoses and wires tied to those; then what the plan moves. */
function breakable(app, step) {
  const { plan, near } = app.sync.data;
  const at = step?.joint ? near?.[step.joint] : null;
  const moved = plan.steps.filter((one) => one.do === 'renew' || one.do === 'take-off').map((one) => one.part);
  const parts = new Set([step?.part, ...(at?.joins ?? []), ...(at?.tied ?? []), ...moved].filter(Boolean));
  const tied = Object.values(near ?? {}).flatMap((one) => one.tied);
  for (const part of tied) parts.add(part);
  return [...(step?.joint ? [{ joint: step.joint }] : []), ...[...parts].map((part) => ({ part }))];
}

/** What broke; what is on no list is said in words and goes to whoever speaks with the owner. */
export function broke(app, step) {
  const { plan } = app.sync.data;
  const words = field('How, or what else', { name: 'words', maxlength: 500 });
  const notice = make('p.notice', { role: 'status' });
  const said = () => words.input.value.trim();
  const press = (thing) => app.record([{ by: app.by(), do: 'break', ...thing, ...(said() ? { reason: said() } : {}) }]);
  return panel(app, 'It broke', words.shown, make('p.careful', {}, 'Press what broke. The job owes a new one from then on.'),
    make('div.list', {}, breakable(app, step).map((thing) => button(called(plan, thing.joint ?? thing.part) + (thing.joint ? ': its fastener' : ''), () => press(thing))),
      button('Something else', () => {
        if (said() === '') notice.textContent = 'Write above what it is.';
        else app.record([{ by: app.by(), do: 'note', ...about(step), reason: 'Found, stop driving: broke: ' + said() }]);
      })), notice);
}

/** What may be done next, whatever the plan would take first. */
export function order(app) {
  const { plan, cards } = app.sync.data;
  const open = new Set(app.car.toDo.map((step) => step.n));
  const may = app.car.toDo.filter((step) => !cards[step.n].needs.some((n) => open.has(n)));
  const upTo = app.car.toDo.filter((step) => step.phase === 'apart' && step.do === 'undo');
  return panel(app, 'What may come next',
    make('div.list', {}, may.map((step) => button([make('small', {}, step.n + ' '), step.text], () => app.show(step)))),
    upTo.length > 1 ? [make('h2', {}, 'Apart to here'), make('p.careful', {}, 'It has come apart already, and nobody ticked it. All steps up to the one that is pressed are written down as done.'),
      make('div.list', {}, upTo.map((step) => button(called(plan, step.joint), () => app.open('upTo', step))))] : null);
}

/** Writes down many steps at once, after what stops has been said. */
export function upTo(app, step) {
  const all = app.car.toDo.filter((one) => one.n <= step.n);
  let sure = false;
  const notice = make('p.notice', { role: 'status' });
  return panel(app, 'Apart to ' + low(called(app.sync.data.plan, step.joint)),
    make('p.careful', {}, count(all.length, 'step') + ' will be written down as done by ' + app.by() + '.'),
    tick('I have seen that all of this is so: the car is held, every aid is on', false, (on) => { sure = on; }, 'stop'), notice,
    make('div.go-bar', {}, button('Write them down', () => {
      if (sure) app.record(all.map((one) => events(one, app.by())));
      else notice.textContent = 'Tick it first.';
    }, 'main-go')),
    make('ul.plain', {}, all.map((one) => make('li', {}, one.text))));
}

export function interrupted(app, step) {
  return asks(app, 'Interrupted', 'By what', 'Show the handover card',
    (said) => app.record([{ by: app.by(), do: 'note', ...about(step), reason: 'Interrupted: ' + said }], null, 'handover'), 'called away');
}

/** How it stands, to be read in eight seconds by whoever takes over. */
export function handover(app) {
  const { car } = app;
  const { plan } = app.sync.data;
  const is = (...states) => [...new Set(plan.steps.filter((one) => one.joint).map((one) => one.joint))]
    .filter((joint) => states.includes(car.state(joint))).map((joint) => called(plan, joint));
  const height = stands(car.height);
  const next = app.current();
  return make('section.panel.handover', { 'aria-label': 'Handover' },
    make('h1.do', {}, (height ? 'Car stands ' + height : 'Nobody wrote down how the car stands') + '. ' + count(car.toDo.length, 'step') + ' left.'),
    line('Broke', [...car.broken.keys()].map((id) => called(plan, id))), line('Stop driving', grave(app)),
    line('Out', is('out')), line('On, not tight', is('started')), line('Loose on purpose', is('loose on purpose')),
    line('Off the car', [...car.off].map((part) => called(plan, part))),
    line('On it to help', [...car.aids.values()].map((on) => (on.aid || 'an aid') + ' on ' + low(called(plan, on.part)))),
    next ? line('Next', [next.text]) : line('Next', ['Look at what the job owes']),
    make('p.careful', {}, car.last ? car.last.by + ', ' + clock(car.last.at) + (car.last.reason ? ': ' + car.last.reason : '') : 'Nothing is done yet.'),
    make('div.go-bar', {}, button('Go on', () => goOn(app), 'main-go')));
}

/** What was found here with which the car is not to be driven. */
function grave(app) {
  const said = 'Found, stop driving: ';
  return remaining(app.sync.events).filter((event) => event.do === 'note' && event.reason?.startsWith(said)).map((event) => event.reason.slice(said.length));
}

/** After an interruption it is written down when the work goes on, so that the minutes between do not count. */
function goOn(app) {
  const { last } = app.car;
  if (last?.do === 'note' && last.reason?.startsWith('Interrupted: ')) app.note({}, 'Went on');
  app.close();
}

function line(label, names) {
  if (!names.length) return null;
  const shown = names.slice(0, 4).join('; ') + (names.length > 4 ? '; and ' + (names.length - 4) + ' more' : '');
  return make('p.hand', {}, make('b', {}, label + (names.length > 1 ? ' (' + names.length + ')' : '')), make('span', {}, shown));
}

export function who(app) {
  if (signedIn()) return panel(app, 'You are signed in as ' + app.by(), make('p.careful', {}, 'What is written down here is written down as yours. Sign out on the garage’s pages for somebody else to work here.'));
  const name = field('Your name', { name: 'who', maxlength: 60, value: app.by() });
  const notice = make('p.notice', { role: 'status' });
  return make('section.panel', { 'aria-label': 'Who works' },
    make('h1.do', {}, 'Who works on this car?'), name.shown, notice,
    make('p.careful', {}, 'It stays on this device and is written beside each step.'),
    make('div.go-bar', {}, button('This is me', () => {
      const said = name.input.value.trim();
      if (said === '') notice.textContent = 'A first name will do.';
      else app.called(said);
    }, 'main-go')));
}

