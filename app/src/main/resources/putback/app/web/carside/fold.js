// How the car stands: a fold over the plan and what was done, so that the page goes on without a network.
// The garage's own reckoning is the one that counts; a test holds this one against it.

const CLOSING = ['clean', 'start', 'run-down', 'tighten', 'second-look'];
const TEN_MINUTES = 600000;

/** What counts: each event once, without what was taken back. */
export function remaining(events) {
  const once = [];
  const seen = new Set();
  for (const event of events) {
    if (seen.has(event.id)) continue;
    seen.add(event.id);
    once.push(event);
  }
  const places = new Map(once.map((event, i) => [event.id, i]));
  const struck = new Set();
  for (let i = once.length - 1; i >= 0; i--) {
    const event = once[i];
    if (event.do === 'correct' && !struck.has(event.id) && places.get(event.corrects) < i) struck.add(event.corrects);
  }
  return once.filter((event) => event.do !== 'correct' && !struck.has(event.id));
}

/** The car after these events. */
export function fold(plan, events) {
  const car = {
    plan,
    did: plan.steps.map(() => null),
    order: plan.steps.map(() => 0),
    heights: plan.steps.map(() => null),
    count: 0,
    joints: new Map(),
    off: new Set(),
    broken: new Map(),
    aside: new Set(),
    aids: new Map(),
    height: null,
    last: null,
    skipped: new Set(),
  };
  const steps = plan.steps;
  const errands = new Map();
  for (const step of steps) {
    if (step.followUp) errands.set(step.followUp, steps.filter((one) => one.brings?.includes(step.followUp)).map((one) => one.joint));
  }
  for (const event of remaining(events)) add(car, errands, event);
  car.toDo = steps.filter((step, i) => !car.did[i] && !isPassed(car, i));
  car.state = (joint) => state(car, joint);
  return car;
}

function add(car, errands, event) {
  if (event.height && event.height !== 'any') car.height = event.height;
  if (event.joint && event.do !== 'carry' && event.do !== 'note') joint(car, event);
  if (event.part) part(car, event);
  broke(car, event);
  tick(car, errands, event);
  if (event.do === 'note') skip(car, event);
  car.last = event;
}

/** What broke, by its id, with the event that says so and what was opened since, until a new one is on record. */
function broke(car, event) {
  if (event.do === 'break') car.broken.set(event.joint ?? event.part, { event, opened: new Set() });
  else if (event.do === 'replace-fastener') car.broken.delete(event.joint);
  else if (event.do === 'renew') [event.part, ...(event.with ?? together(car, event))].forEach((one) => car.broken.delete(one));
  if (event.do === 'undo') for (const one of car.broken.values()) one.opened.add(event.joint);
}

function skip(car, event) {
  const match = /^Skipped ([a-z-]+): /.exec(event.reason ?? '');
  if (!match) return;
  const step = car.plan.steps.find((one, i) => !car.did[i] && one.do === match[1] && !car.skipped.has(one.n)
      && same(one.joint, event.joint) && same(one.part, event.part) && same(one.followUp, event.followUp));
  if (step) car.skipped.add(step.n);
}

const same = (one, other) => (one ?? null) === (other ?? null);

function isOf(step, event) {
  return step.do === event.do && same(step.joint, event.joint) && same(step.part, event.part)
      && same(step.followUp, event.followUp) && (!event.aid || same(step.aid, event.aid))
      && (step.do !== 'height' || step.height === event.height);
}

function tick(car, errands, event) {
  const at = car.plan.steps.findIndex((step, i) => !car.did[i] && isOf(step, event));
  takeBack(car, errands, event, at < 0);
  if (at < 0) return;
  car.count++;
  car.did[at] = event;
  car.order[at] = car.count;
  car.heights[at] = car.height;
}

function takeBack(car, errands, event, again) {
  const { joint: id, part: moved } = event;
  if (event.do === 'undo' || event.do === 'replace-fastener') {
    const reopens = event.do === 'undo' ? again : car.plan.steps.some((step, i) => car.did[i] && step.do === 'tighten' && step.joint === id);
    if (reopens && id) {
      clear(car, CLOSING, id);
      if (event.do === 'undo') clearErrands(car, errands, id);
    }
  } else if (event.do === 'break-loose') clear(car, ['tighten', 'second-look'], id);
  else if (event.do === 'tighten') clear(car, ['second-look'], id);
  else if (event.do === 'take-off' && again) clearLast(car, 'offer-up', moved);
  else if (event.do === 'support' && again) clearLast(car, 'release', moved);
}

function clear(car, which, id) {
  car.plan.steps.forEach((step, i) => {
    if (id && step.joint === id && which.includes(step.do)) car.did[i] = null;
  });
}

function clearErrands(car, errands, id) {
  car.plan.steps.forEach((step, i) => {
    if (step.followUp && errands.get(step.followUp)?.includes(id)) car.did[i] = null;
  });
}

function clearLast(car, did, moved) {
  for (let i = car.plan.steps.length - 1; i >= 0; i--) {
    const step = car.plan.steps[i];
    if (car.did[i] && step.do === did && same(step.part, moved)) {
      car.did[i] = null;
      return;
    }
  }
}

/** Whether nobody ticked it and what was done since has made it pointless. */
function isPassed(car, at) {
  const step = car.plan.steps[at];
  const later = (which) => car.plan.steps.some((one, i) => i > at && car.did[i] && which.includes(one.do)
      && same(one.joint, step.joint) && same(one.part, step.part));
  switch (step.do) {
    case 'check': case 'mark': case 'break-loose': return Boolean(step.joint) && later(['undo', 'start']);
    case 'undo': case 'clean': return later(['start', 'tighten']);
    case 'start': return later(['run-down', 'tighten']);
    case 'run-down': return later(['tighten']);
    case 'look': return isGoneOn(car, step);
    case 'prepare': case 'take-off': return later(['offer-up']);
    case 'height': return car.plan.steps.some((one, i) => i > at && car.did[i] && car.heights[i] === step.height);
    default: return false;
  }
}

function isGoneOn(car, look) {
  let opened = 0;
  car.plan.steps.forEach((step, i) => {
    if (step.do === 'undo' && same(step.joint, look.joint)) opened = car.did[i] ? car.order[i] : 0;
  });
  return opened > 0 && car.count > opened;
}

function joint(car, event) {
  const was = car.joints.get(event.joint) ?? {};
  const open = { opened: true };
  switch (event.do) {
    case 'undo': Object.assign(was, { loosened: false, started: false, runDown: false, replaced: false, seated: null, tightened: null, looked: false, seatLooked: false }, open); break;
    case 'break-loose': Object.assign(was, { loosened: true, tightened: null, looked: false }); break;
    case 'start': case 'run-down':
      Object.assign(was, { started: true, runDown: was.runDown || event.do === 'run-down', seated: event, seatLooked: false });
      break;
    case 'replace-fastener':
      if (was.tightened) Object.assign(was, { loosened: false, started: false, runDown: false, seated: null, tightened: null, looked: false, seatLooked: false });
      Object.assign(was, { replaced: true }, open);
      break;
    case 'tighten': Object.assign(was, { started: true, tightened: event, looked: false }); break;
    case 'second-look':
      was.looked = was.looked || isLook(was.tightened, event);
      was.seatLooked = was.seatLooked || isLook(was.seated, event);
      break;
    default:
  }
  car.joints.set(event.joint, was);
}

/** Whether a look counts as a second one: by another person, or by the same one ten minutes later. */
export function isLook(closed, look) {
  if (!closed) return false;
  const then = Date.parse(closed.at);
  const now = Date.parse(look.at);
  if (now < then) return false;
  return Boolean(bare(closed.by) && bare(look.by) && !isSame(closed.by, look.by)) || now - then >= TEN_MINUTES;
}

/** A name without its stops, spaces and case: “Ann” and “ann.” are one person. */
const bare = (name) => (name ?? '').toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/** Whether two names are one person’s, however they were written. */
export function isSame(one, other) {
  return bare(one) === bare(other);
}

function state(car, id) {
  const was = car.joints.get(id);
  const steps = car.plan.steps.filter((step) => step.joint === id);
  const tight = steps.filter((step) => step.do === 'tighten').pop();
  const known = steps.some((step) => ['undo', 'start', 'tighten', 'second-look'].includes(step.do));
  if (!was || !(was.opened || was.loosened || was.started)) return 'untouched';
  if (was.opened && !was.started) return 'out';
  const threaded = !known || Boolean(tight);
  if (threaded && !was.tightened) {
    const later = was.runDown && tight && (['ride height', 'on wheels'].includes(tight.tightenAt) || tight.tightenAfter?.length > 0);
    return later || was.loosened ? 'loose on purpose' : 'started';
  }
  if (!was.started) return 'loose on purpose';
  return (threaded ? was.looked : was.looked || was.seatLooked) ? 'marked' : 'final';
}

function part(car, event) {
  const all = [event.part, ...(event.with ?? together(car, event))];
  switch (event.do) {
    case 'take-off': all.forEach((one) => { car.off.add(one); car.aside.delete(one); }); break;
    case 'offer-up': all.forEach((one) => { car.off.delete(one); car.aside.delete(one); }); break;
    case 'support': case 'aside': putOn(car, event); break;
    case 'release':
      for (const [key, on] of car.aids) {
        if (on.part === event.part && (!event.aid || event.aid === on.aid)) car.aids.delete(key);
      }
      if (![...car.aids.values()].some((on) => on.part === event.part)) car.aside.delete(event.part);
      break;
    default:
  }
}

function together(car, event) {
  const step = car.plan.steps.filter((one) => one.do === event.do && one.part === event.part).pop();
  return step?.with ?? [];
}

function putOn(car, event) {
  let aid = event.aid;
  if (event.do === 'aside') {
    car.aside.add(event.part);
    aid = aid ?? car.plan.steps.find((step) => step.do === 'aside' && step.part === event.part)?.aid;
    if (!aid) return;
  }
  car.aids.set((aid ?? '') + ' ' + event.part, { aid: aid ?? '', part: event.part });
}
