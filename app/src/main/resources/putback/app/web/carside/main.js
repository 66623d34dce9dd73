// The page at the car: one step at a time, whether there is a network or not.

import { button, clock, count, fill, make } from './make.js';
import * as device from './device.js';
import { card } from './card.js';
import { done, carry } from './done.js';
import { fold, isLook } from './fold.js';
import { ladder } from './ladder.js';
import * as panels from './panels.js';
import { pay } from './pay.js';
import { whole } from './broken.js';
import { planChanged } from './standing.js';
import { resorts, stopped, wontMove } from './resorts.js';
import * as shelf from './shelf.js';
import { Sync } from './sync.js';

const PANELS = { ...panels, resorts, wontMove, carry, pay, planChanged, whole, stopped };
const $ = (id) => document.getElementById(id);

class App {
  constructor() {
    this.job = document.body.dataset.job;
    this.ticks = new Set();
    this.at = null;
    this.panel = null;
    this.shown = '';
    this.trouble = '';
    this.planNews = false;
    this.greeted = false;
    this.sync = new Sync({ job: this.job, device: '', by: () => this.by(), told: (what) => this.told(what) });
  }

  async start() {
    if (!this.by()) this.panel = ['who'];
    device.prepare();
    device.stayAwake();
    try {
      this.sync.page.device = await shelf.device();
      await this.sync.start();
    } catch (fault) {
      this.trouble = 'This device keeps nothing (' + fault.message + '), so nothing can be written down here. A private window? Open the page in a usual one.';
    }
    this.greet();
    this.render();
  }

  /** Whoever opens the page after an interruption, on whichever device, sees first how the car stands. */
  greet() {
    if (this.greeted || this.panel || !this.car) return;
    const { last } = this.car;
    if (last?.do === 'note' && last.reason?.startsWith('Interrupted: ')) this.panel = ['handover'];
    this.greeted = Boolean(this.panel) || this.sync.reached;
  }

  by() {
    return device.name();
  }

  called(name) {
    device.setName(name);
    this.panel = null;
    this.greet();
    this.sync.hear();
    this.render();
  }

  told(what) {
    if (what === 'plan') this.planNews = true;
    if (this.sync.data && what !== 'net') this.car = fold(this.sync.data.plan, this.sync.events);
    this.greet();
    this.render();
  }

  /** The next step: the first that is neither done nor skipped. */
  current() {
    return this.car.toDo.find((step) => !this.car.skipped.has(step.n)) ?? null;
  }

  step(n) {
    return this.sync.data.plan.steps.find((step) => step.n === n) ?? null;
  }

  doneBy(step) {
    return this.car.did[this.sync.data.plan.steps.indexOf(step)];
  }

  /** The event that a second look at a joint is about. */
  closed(joint) {
    const was = this.car.joints.get(joint);
    return was?.tightened ?? was?.seated ?? null;
  }

  /** The number behind the last step, at which what is owed is shown. */
  end() {
    return this.sync.data.plan.steps.length + 1;
  }

  /** Whether a look by whoever works here counts as a second one by now. */
  mayLook(closed) {
    return isLook(closed, { at: new Date().toISOString(), by: this.by() });
  }

  /** Writes down; the card goes on once it is kept on this device. */
  async record(events, at = null, panel = null) {
    const { data } = this.sync;
    try {
      await this.sync.write(events);
    } catch (fault) {
      this.trouble = fault instanceof shelf.Full
        ? 'This device is full: the last tick was NOT kept. Make room on it, then tick again.'
        : 'The last tick was NOT kept: ' + fault.message;
      this.render();
      return;
    }
    this.trouble = '';
    this.at = at;
    this.panel = panel ? [panel] : null;
    if (data) this.ticks.clear();
    this.render(true);
  }

  skip(step, why) {
    const about = Object.fromEntries(['joint', 'part', 'followUp'].filter((key) => step[key]).map((key) => [key, step[key]]));
    return this.record([{ by: this.by(), do: 'note', ...about, reason: 'Skipped ' + step.do + ': ' + why }]);
  }

  /** Keeps a note without leaving what is shown. */
  note(step, reason) {
    this.sync.write([{ by: this.by(), do: 'note', ...(step.joint ? { joint: step.joint } : {}), reason }]).catch((fault) => {
      this.trouble = 'The note was NOT kept: ' + fault.message;
      this.render();
    });
  }

  show(step) {
    this.at = step.n;
    this.panel = null;
    this.render(true);
  }

  back(step) {
    const n = (step?.n ?? this.sync.data.plan.steps.length + 1) - 1;
    if (n >= 1) this.show(this.step(n));
  }

  onward(step) {
    const next = this.step(step.n + 1);
    this.at = next && this.doneBy(next) ? next.n : null;
    this.panel = null;
    this.render(true);
  }

  open(name, about) {
    this.panel = [name, about];
    this.render(true);
  }

  close() {
    this.panel = null;
    this.render(true);
  }

  render(fresh = false) {
    this.net();
    if (!this.car) {
      const said = this.trouble || this.sync.trouble || (this.sync.cutOff ? 'Without a network, and this job was never opened on this device.' : '');
      if (said) fill($('main'), make('p.wait', {}, said));
      return;
    }
    $('car').textContent = this.sync.data.job.car;
    fill($('by'), button(this.by() || 'Who?', () => this.open('who'), 'quiet'));
    const view = this.view();
    if (fresh || view.key !== this.shown) this.renderView(view);
    const place = document.querySelector('.side .ladder-here');
    if (place) fill(place, ladder(this.sync.data.plan, this.car, view.joint));
  }

  /** What is to be seen now, and a key that changes when it has to be drawn anew. */
  view() {
    const { plan, last } = this.sync.data;
    if (this.planNews && !this.panel) {
      this.at = null;
      this.panel = ['planChanged'];
    }
    if (this.panel) return { key: 'panel ' + this.panel[0], joint: this.panel[1]?.joint };
    const step = this.at === null ? this.current() : this.step(this.at);
    if (!step) return { key: ['end', last, this.sync.fresh, this.sync.cutOff, this.car.toDo.length].join(' ') };
    return { key: ['step', step.n, step.text, this.doneBy(step)?.id, this.car.height, [...this.car.broken.keys()].join(' '), this.closed(step.joint)?.id, plan.steps.length].join(' '), step, joint: step.joint };
  }

  renderView(view) {
    clearInterval(this.beating);
    this.shown = view.key;
    const body = this.panel ? PANELS[this.panel[0]](this, this.panel[1]) : view.step ? card(this, view.step) : done(this);
    const side = make('aside.side', { 'aria-label': 'Ladder and what else may happen' },
      view.step && !this.doneBy(view.step) ? this.others(view.step) : null,
      make('div.ladder-here', {}));
    fill($('main'), body, this.panel?.[0] === 'handover' || this.panel?.[0] === 'who' ? null : side);
    scrollTo(0, 0);
    $('main').focus({ preventScroll: true });
  }

  others(step) {
    return make('div.others', {},
      button('Skip', () => this.open('skip', step)),
      button('Out of order', () => this.open('order', step)),
      step.do === 'undo' || step.do === 'break-loose' ? button('It will not move', () => this.open('wontMove', step)) : null,
      button('Found something', () => this.open('found', step)),
      button('It broke', () => this.open('broke', step)),
      button('Note', () => this.open('note', step)),
      button('Interrupted', () => this.open('interrupted', step)),
      button('What is owed', () => { this.at = this.end(); this.close(); }),
      device.speaks ? button('Read aloud', () => this.read(step)) : null);
  }

  read(step) {
    const own = this.sync.data.cards[step.n];
    device.read([step.text, own.where, own.tools, ...own.wrench, ...step.cautions]);
  }

  /** Whether the garage hears this device, in words; nothing where all is well. */
  net() {
    const { unsent, cutOff, trouble, clockIsWrong, skew } = this.sync;
    const lines = [this.trouble, trouble].filter(Boolean);
    if (unsent.length) lines.push((cutOff ? 'No network. ' : 'Sending ') + count(unsent.length, 'step') + (cutOff ? ' kept on this device, sent when it is back.' : ' …'));
    else if (cutOff && this.sync.data) lines.push('No network. Everything up to here is with the garage.');
    if (clockIsWrong) lines.push('This device’s clock is ' + count(Math.round(Math.abs(skew) / 60), 'minute') + (skew > 0 ? ' ahead of' : ' behind') + ' the garage’s (' + clock(Date.now() - skew * 1000) + '). Steps keep their order; set the clock.');
    $('net').hidden = lines.length === 0;
    $('net').textContent = lines.join(' ');
    $('net').dataset.unsent = unsent.length;
  }
}

const app = new App();

app.start();
