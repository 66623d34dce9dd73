// The end of the job: what it still owes, worst first, and what stays open on purpose.

import { button, count, make } from './make.js';
import { called, field } from './parts.js';
import { panel } from './panels.js';

const SHOWN = 6;

/** What is owed, as the garage reckons it; without a network as it was last heard. */
export function done(app) {
  const { owing, plan } = app.sync.data;
  const { fresh } = app.sync;
  const left = app.car.toDo;
  const settled = fresh && owing.settled;
  return make('section.panel', { 'aria-label': 'What the job owes' },
    make('h1.do', {}, settled ? 'Settled: nothing is owed.' : 'What this job owes'),
    fresh ? null : make('p.beware', {}, app.sync.cutOff
      ? 'The garage does not know all of this yet. What is owed is reckoned when the network is back.'
      : 'The garage is reckoning what is owed now; what was settled a moment ago may still stand here.'),
    settled && !owing.mayBeDriven ? make('p.beware', {}, 'Not to be driven: ' + (owing.notDrivenBecause.join('; ') || 'something stays open on purpose') + '.') : null,
    make('ul.owed', {}, owing.owes.map((debt) => owed(app, debt))),
    owing.carried.length ? [make('h2', {}, 'Stays open on purpose'), make('ul.plain', {}, owing.carried.map((debt) => make('li', {},
      called(plan, debt.joint ?? debt.part ?? debt.followUp) + ': ' + debt.detail + '. ' + debt.by + ': ' + debt.reason)))] : null,
    unmeasured(app),
    left.length ? [make('h2', {}, count(left.length, 'step') + ' of the plan not ticked'), make('div.list', {}, left.slice(0, SHOWN).map((step) => button([make('small', {}, step.n + ' '), step.text], () => app.show(step)))),
      left.length > SHOWN ? make('p', {}, 'And ' + (left.length - SHOWN) + ' after those.') : null] : null,
    make('div.go-bar', {}, button('Back', () => app.back(null), 'quiet'), button('Look again', () => app.sync.refresh(), 'main-go')));
}

/** What is tight and nobody knows how tight: nothing is owed for it, and it is said. */
function unmeasured(app) {
  const { plan, cards } = app.sync.data;
  const which = plan.steps.filter((step) => cards[step.n].unknown && app.car.joints.get(step.joint)?.tightened && !app.car.joints.get(step.joint).tightened.torqueNm);
  return which.length ? [make('h2', {}, 'Tight without a figure'), make('p.careful', {}, 'Their torque is not known, and stands so on the record.'),
    make('ul.plain', {}, which.map((step) => make('li', {}, called(plan, step.joint))))] : null;
}

function owed(app, debt) {
  const { plan } = app.sync.data;
  const id = debt.joint ?? debt.part ?? debt.followUp;
  const step = payer(app, debt);
  return make('li', {}, make('p', {}, make('b', {}, called(plan, id)), ': ' + debt.detail),
    make('div.go-bar', {},
      button('Do it now', () => (step ? app.show(step) : app.open('pay', debt))),
      button('Stays open', () => app.open('carry', debt), 'quiet')));
}

const CLOSING = ['undo', 'clean', 'start', 'run-down', 'tighten'];

/** What pays each kind of debt, in the order in which it is done. */
const PAYS = {
  'not started': CLOSING, 'not tightened': CLOSING, 'torque missing': ['tighten'], 'torque outside': ['tighten'], 'wrong height': ['tighten'],
  'second look': ['second-look'], 'part off': ['offer-up'], 'aid left': ['release'], 'not renewed': ['renew', 'offer-up'], 'follow-up': ['follow-up'],
  broken: ['renew'],
};

/** The open step that pays it, if there is one. What is single-use or broken is put right before its own steps come again. */
function payer(app, debt) {
  if (debt.kind === 'broken' && debt.joint) return undefined;
  const about = (step) => (debt.joint ? step.joint === debt.joint : debt.part ? step.part === debt.part : step.followUp === debt.followUp);
  return app.car.toDo.find((step) => about(step) && PAYS[debt.kind]?.includes(step.do));
}

/** What stays open has a name and a reason, and the car is not to be driven. */
export function carry(app, debt) {
  const { plan } = app.sync.data;
  const why = field('Why it stays open', { rows: 3, name: 'words' }, true);
  const notice = make('p.notice', { role: 'status' });
  const about = Object.fromEntries(['joint', 'part', 'followUp'].filter((key) => debt[key]).map((key) => [key, debt[key]]));
  return panel(app, called(plan, debt.joint ?? debt.part ?? debt.followUp) + ' stays open',
    make('p.careful', {}, debt.detail + '. The car is then marked not to be driven, with your name and your reason.'), why.shown, notice,
    make('div.go-bar', {}, button('It stays open', () => {
      const said = why.input.value.trim();
      if (said === '') notice.textContent = 'A reason is needed.';
      else app.record([{ by: app.by(), do: 'carry', ...about, reason: said }]);
    }, 'main-go')));
}
