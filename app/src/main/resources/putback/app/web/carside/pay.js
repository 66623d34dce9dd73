// What is owed and no open step pays: it is done again, or it is about a fixing that the plan does not know any more.

import { button, make } from './make.js';
import { both, called, field, number } from './parts.js';
import { panel } from './panels.js';
import { renewLink, wants } from './broken.js';

const AT = { raised: 'with the car raised', 'ride height': 'at ride height', 'on wheels': 'with the car on its wheels' };

/** Asks for what pays a debt, and writes it down. */
export function pay(app, debt) {
  const { kind, joint, part, followUp } = debt;
  const name = called(app.sync.data.plan, joint ?? part ?? followUp);
  switch (kind) {
    case 'not tightened': case 'torque missing': case 'torque outside': case 'wrong height': return tighten(app, debt, name);
    case 'second look': return looked(app, debt, name);
    case 'not started': return says(app, debt, name, 'On its thread', { do: 'start', joint }, 'Put it on its thread by hand. What it is tightened to is asked next.');
    case 'fastener reused': return says(app, debt, name, 'A new one is in', { do: 'replace-fastener', joint },
      'It is single-use. Take the old one out and put a new one in; start and tightening are asked for again after that.');
    case 'broken': return joint
      ? says(app, debt, name, 'A new one is in', { do: 'replace-fastener', joint }, 'Put a new fastener in. Start and tightening are asked for after that.')
      : says(app, debt, name, 'A new one is in', { do: 'renew', part }, [wants(app, part) ?? 'Put a new one in.', make('div.list', {}, renewLink(app))]);
    case 'part off': return says(app, debt, name, 'It is back on the car', { do: 'offer-up', part }, 'Put it back. Its fixings are owed by themselves.');
    case 'aid left': return says(app, debt, name, 'It is off', { do: 'release', part }, 'Take it off, once the part holds by itself.');
    case 'not renewed': return says(app, debt, name, 'A new one is on', { do: 'renew', part }, 'Put the new one on.');
    default: return says(app, debt, name, 'Done', { do: 'follow-up', followUp }, 'Do it with the car standing as it has to for this.');
  }
}

function says(app, debt, name, label, event, words) {
  return panel(app, name, make('p.careful', {}, debt.detail + '.'), typeof words === 'string' ? make('p.careful', {}, words) : words,
    make('div.go-bar', {}, button(label, () => app.record([{ by: app.by(), ...event }], app.end()), 'main-go')));
}

/** How tight the plan or, beyond it, the sheet wants it. */
function asked(app, joint) {
  const { plan, beyond, cards } = app.sync.data;
  const step = plan.steps.filter((one) => one.do === 'tighten' && one.joint === joint).pop();
  if (!step) return beyond?.[joint] ?? {};
  const own = cards[step.n];
  return { torque: own.torque, source: own.source, tightenAt: step.tightenAt, torqueNm: step.torqueNm, windowNm: step.windowNm, angleDeg: step.angleDeg, wrench: step.wrench?.id };
}

function tighten(app, debt, name) {
  const want = asked(app, debt.joint);
  const typed = field('Read on the wrench, in N·m', { inputmode: 'decimal', name: 'torque' });
  const why = field('Or why there is no reading', { name: 'words', maxlength: 500 });
  const notice = make('p.notice', { role: 'status' });
  let sure = false;
  const keep = (extra) => app.record([{ by: app.by(), do: 'tighten', joint: debt.joint, ...extra, ...(want.wrench && extra.torqueNm ? { wrench: want.wrench } : {}) }], app.end());
  const press = () => {
    const read = number(typed.input.value);
    const said = why.input.value.trim();
    if (typed.input.value.trim() === '' && said !== '') return keep({ untorqued: said });
    if (!Number.isFinite(read) || read <= 0 || read > 5000) {
      notice.textContent = 'Write what the wrench showed, or why there is no reading.';
      return undefined;
    }
    const [least, most] = want.windowNm ?? [0, Infinity];
    if ((read < least || read > most) && !sure) {
      sure = true;
      notice.textContent = both(read) + ' is outside ' + both(least) + ' to ' + both(most) + '. Look again; press once more and the job will owe this.';
      return undefined;
    }
    return keep({ torqueNm: read, ...(want.angleDeg ? { angleDeg: want.angleDeg } : {}) });
  };
  return panel(app, name + ': tighten it',
    make('p.careful', {}, debt.detail + '.'),
    make('div.torque-box', {},
      make('p.figure', {}, want.torque || 'Torque not known', AT[want.tightenAt] ? make('small', {}, ' ' + AT[want.tightenAt]) : null),
      make('p', {}, want.torque ? 'Source: ' + (want.source || 'nobody says where this figure came from') : 'Take it from the maker’s data.'),
      want.tightenAt === 'on wheels' && app.car.height === 'raised' ? make('p.beware', {}, 'By what was written down the car stands raised now.') : null),
    typed.shown, why.shown, notice,
    make('div.go-bar', {}, button('Tight', press, 'main-go')));
}

function looked(app, debt, name) {
  const step = { do: 'second-look', joint: debt.joint, text: name + ': ' + debt.detail + '.' };
  const closed = app.closed(debt.joint);
  return panel(app, name, make('p.careful', {}, debt.detail + '.'),
    closed ? make('p.careful', {}, 'Tightened by ' + closed.by + '.') : null,
    make('div.go-bar', {}, app.mayLook(closed)
      ? button('Looked: it is tight', () => app.record([{ by: app.by(), do: 'second-look', joint: debt.joint }], app.end()), 'main-go')
      : button('Another person looks', () => app.open('second', step), 'main-go')));
}
