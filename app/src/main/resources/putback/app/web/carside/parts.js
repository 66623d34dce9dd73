// Pieces that several cards have, and what a step writes down.

import { make } from './make.js';

/** The text of a step in two: what is done, and what is said about it. */
export function words(step, card) {
  if (step.do !== 'tighten' || !step.text.includes(': ')) return { head: step.text, rest: '' };
  const at = step.text.indexOf(': ');
  let rest = step.text.slice(at + 2);
  if (card.torque && rest.startsWith(card.torque)) rest = rest.slice(card.torque.length).replace(/^[,;. ]+/, '');
  return { head: step.text.slice(0, at), rest: rest ? rest[0].toUpperCase() + rest.slice(1) : '' };
}

/** Where the hand goes: wheel well, left; car raised. As the car stands, where that is written down, and not as the plan has it. */
export function place(step, card, height) {
  const phase = step.phase === 'apart' ? 'Apart' : 'Together';
  const stands = height ?? step.height;
  const words = stands === 'ride height' ? 'at ride height' : stands;
  return [phase, card.where, step.do === 'height' || words === 'any' ? '' : 'car ' + words].filter(Boolean).join(' · ');
}

/** A tick that a glove hits. */
export function tick(label, checked, change, kind = '') {
  const box = make('input', { type: 'checkbox', checked, onchange: (event) => change(event.target.checked) });
  return make('label.big-tick' + (kind ? '.' + kind : ''), {}, box, make('span', {}, label));
}

/** A labelled field; `area` for more than a line. */
export function field(label, attributes, area = false) {
  const input = make(area ? 'textarea' : 'input', { autocomplete: 'off', ...attributes });
  return { input, shown: make('label.big-field', {}, make('span', {}, label), input) };
}

/** What a step writes down when it is done; `extra` has torque, wrench or reason. */
export function events(step, by, extra = {}) {
  const event = { by, do: step.do };
  for (const key of ['joint', 'part', 'aid', 'followUp']) if (step[key]) event[key] = step[key];
  if (step.with?.length) event.with = step.with;
  if (step.do === 'height') event.height = step.height;
  return { ...event, ...extra };
}

/** The name of a joint, part or follow-up. */
export function called(plan, id) {
  return plan.names[id] ?? id;
}

/** The same inside a sentence. */
export function low(name) {
  return name.length < 2 || /[a-z ]/.test(name[1]) ? name[0].toLowerCase() + name.slice(1) : name;
}

/** What a step is about. */
export function subject(step) {
  return step.joint ?? step.part ?? step.followUp ?? '';
}

/** A number as it is typed, with point or comma; NaN for none. */
export function number(typed) {
  return typed.trim() === '' ? NaN : Number(typed.trim().replace(',', '.'));
}

/** N·m with pounds and feet beside it. 1 lbf·ft = 1.3558179483 N·m exactly enough for a page. */
export function both(newtonMetres) {
  const pounds = newtonMetres / 1.3558179483314004;
  return round(newtonMetres) + ' N·m (' + (pounds < 10 ? pounds.toFixed(1) : Math.round(pounds)) + ' lbf·ft)';
}

const round = (value) => String(Math.round(value * 10) / 10);
