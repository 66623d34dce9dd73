// What broke is not put back as it is: who said so and when, what a new one hangs on, and what is to be done again for it.

import { button, clock, make } from './make.js';
import { called, low } from './parts.js';
import { panel } from './panels.js';

/** What a step moves or closes and what broke: its fixing, its parts, those that go with them. Each with a sentence that says so. */
export function brokeHere(app, step) {
  const { near, plan } = app.sync.data;
  if (!['offer-up', 'start', 'run-down', 'tighten'].includes(step.do)) return [];
  const about = new Set([step.joint, step.part, ...(step.with ?? []), ...(near?.[step.joint]?.joins ?? [])].filter(Boolean));
  return [...app.car.broken].filter(([id]) => about.has(id)).map(([id, { event }]) => ({ id, event, words: said(plan, id, event) }));
}

function said(plan, id, event) {
  return called(plan, id) + (event.joint ? ': its fastener' : '') + ' broke: ' + [event.by, clock(event.at), event.reason].filter(Boolean).join(', ') + '.';
}

/** Instead of the step itself: a new one first, in the hand or in the plan. */
export function newFirst(app, step, broken) {
  const fresh = broken.map(({ event }) => ({ by: app.by(), ...(event.joint ? { do: 'replace-fastener', joint: event.joint } : { do: 'renew', part: event.part }) }));
  return make('section.broke-first', { 'aria-label': 'It broke' },
    broken.map((one) => make('p.beware', {}, one.words)),
    make('p.careful', {}, 'It does not go back as it is.'),
    broken.filter(({ event }) => event.part).map(({ id }) => wants(app, id)),
    make('div.go-bar', {}, button('A new one is in my hand', () => app.record(fresh, step.n), 'main-go')),
    make('div.list', {}, broken.some(({ event }) => event.part) ? renewLink(app) : null,
      broken.map(({ id, event }) => button('It did not break: ' + low(called(app.sync.data.plan, id)), () => app.open('whole', event)))));
}

/** To where the job says what it renews, so that the plan brings all that belongs to a new one. */
export function renewLink(app) {
  return make('a.button', { href: '/job/' + app.job + '#scope' }, 'Renew it in this job');
}

/** What a new part hangs on; fixings that nobody opened since it broke are named, with what follows from opening them. */
export function wants(app, id) {
  const { plan, hangs } = app.sync.data;
  const on = hangs?.[id];
  if (!on || !on.joints.length) return null;
  const opened = app.car.broken.get(id)?.opened ?? new Set();
  const closed = on.joints.filter((joint) => !opened.has(joint) && app.car.state(joint) !== 'out');
  if (!closed.length) return null;
  const names = (ids) => make('ul.plain', {}, ids.map((one) => make('li', {}, called(plan, one))));
  return make('div.wants', {},
    make('p.careful', {}, called(plan, id) + ' hangs on these, and nobody wrote down that they were opened since it broke. A new one means that each is undone, tightened again and looked at a second time:'),
    names(closed),
    on.followUps.length ? [make('p.careful', {}, 'And afterwards:'), names(on.followUps)] : null,
    on.hydraulic ? make('p.beware', {}, 'It carries brake fluid: bleed the brakes and look for leaks under pedal pressure, by the maker’s procedure.') : null);
}

/** It was pressed by mistake. */
export function whole(app, event) {
  const { plan } = app.sync.data;
  return panel(app, called(plan, event.joint ?? event.part) + ' did not break',
    make('p.careful', {}, 'What was written down is taken back, and stays on the record as taken back.'),
    make('div.go-bar', {}, button('It is whole, take it back', () => app.record([{ by: app.by(), do: 'correct', corrects: event.id, reason: 'it did not break' }]), 'main-go')));
}
