// Between this device and the garage's books: sends what was written down, once and in order; hears what others did.

import * as shelf from './shelf.js';

const MOST = 200;
const FIRST_WAIT = 1000;
const LONGEST_WAIT = 30000;
/** A network that swallows what it is given is as good as none. */
const LONGEST_ANSWER = 8000;
const HEARD_EVERY = 60000;
const SKEW = 120;

/**
 * Keeps a job and its device in step with the garage. `page` has job, device, by() and told(what), which is called when
 * anything changed that is to be seen.
 */
export class Sync {
  constructor(page) {
    this.page = page;
    this.data = null;
    this.theirs = [];
    this.mine = [];
    this.reached = false;
    this.losses = 0;
    this.deaf = false;
    this.trouble = '';
    this.skew = 0;
    this.wait = FIRST_WAIT;
    this.timer = 0;
    this.sending = null;
  }

  get base() {
    return '/job/' + this.page.job;
  }

  /** Whether the garage was asked and gave no answer; before the first asking nobody knows. */
  get cutOff() {
    return !this.reached && this.losses > 0;
  }

  /** What the garage does not have yet. */
  get unsent() {
    return this.mine.filter((one) => !one.sent && !one.refused);
  }

  /** Everything that is known to have been done: the garage's order first, then what only this device knows. */
  get events() {
    const known = new Set(this.theirs.map((event) => event.id));
    return [...this.theirs, ...this.mine.filter((one) => !known.has(one.event.id) && !one.refused).map((one) => one.event)];
  }

  /** From the device first, so that the page stands at once; then from the garage. */
  async start() {
    const kept = await shelf.job(this.page.job);
    this.mine = await shelf.own(this.page.job);
    if (kept) {
      this.data = kept.data;
      this.theirs = kept.events;
      this.page.told('kept');
    }
    await this.refresh();
    this.flush();
    this.follow();
    this.hear();
    setInterval(() => this.hear(), HEARD_EVERY);
    addEventListener('online', () => this.again());
    addEventListener('offline', () => this.lost());
    document.addEventListener('visibilitychange', () => (document.hidden ? this.leave() : this.again()));
  }

  again() {
    this.wait = FIRST_WAIT;
    this.flush();
    if (!this.stream || this.stream.readyState === EventSource.CLOSED) this.follow();
  }

  lost() {
    this.reached = false;
    this.losses += 1;
    this.deaf = true;
    this.page.told('net');
  }

  /** The garage answered; to what was asked before the network went, the answer says nothing about now. */
  answered(losses) {
    if (losses !== this.losses) return;
    this.reached = true;
    if (this.deaf) {
      // A stream does not notice by itself that it was cut off in silence.
      this.deaf = false;
      this.follow();
    }
  }

  /** Fetches the plan, what is owed and what was done. */
  async refresh() {
    const { losses } = this;
    try {
      const answer = await fetch(this.base + '/carside.json', { signal: AbortSignal.timeout(LONGEST_ANSWER) });
      if (!answer.ok) return this.refused(answer);
      const data = await answer.json();
      await this.catchUp(data.last);
      const changed = this.data && this.data.job.scope !== data.job.scope;
      this.data = data;
      this.tellTime(data.now);
      this.answered(losses);
      await this.keep();
      this.page.told(changed ? 'plan' : 'data');
    } catch {
      this.lost();
    }
    return undefined;
  }

  async refused(answer) {
    const said = await answer.json().catch(() => ({}));
    this.reached = true;
    this.trouble = said.faults?.join(' ') || 'The garage answers with a fault (' + answer.status + ').';
    this.page.told('net');
  }

  async catchUp(last) {
    const from = this.theirs.length;
    if (from > last) this.theirs = [];
    if (from === last) return;
    const lines = await (await fetch(this.base + '/events?since=' + this.theirs.length, { signal: AbortSignal.timeout(LONGEST_ANSWER) })).text();
    lines.split('\n').filter(Boolean).forEach((line) => this.take(JSON.parse(line)));
  }

  /** An event with its number in the chain; one that is there already is left alone. */
  take(event) {
    if (event.n === this.theirs.length + 1) this.theirs.push(event);
  }

  async keep() {
    try {
      await shelf.keep(this.page.job, this.data, this.theirs);
    } catch (fault) {
      this.trouble = fault instanceof shelf.Full
        ? 'This device is full. Steps are still sent, but without a network the page will be an old one: make room on it.'
        : 'This device keeps nothing (' + fault.message + '). Without a network the page will not open.';
      this.page.told('net');
    }
  }

  /** Writes down what was done here; throws, and nothing was written, when the device cannot keep it. */
  async write(all) {
    await shelf.write(this.page.job, this.page.device, all);
    this.mine = await shelf.own(this.page.job);
    this.page.told('events');
    this.flush();
  }

  /** Sends what waits, one batch after the other; only once at a time, and once more for what came meanwhile. */
  flush() {
    this.asked = true;
    this.sending ??= this.sendAll().finally(() => { this.sending = null; });
    return this.sending;
  }

  async sendAll() {
    while (this.asked) {
      this.asked = false;
      await this.send();
    }
  }

  async send() {
    clearTimeout(this.timer);
    let sent = false;
    while (this.unsent.length > 0) {
      const batch = this.unsent.slice(0, MOST);
      const { losses } = this;
      let answer;
      let said;
      try {
        answer = await fetch(this.base + '/events', {
          method: 'POST',
          signal: AbortSignal.timeout(LONGEST_ANSWER),
          headers: { 'Content-Type': 'application/x-ndjson' },
          body: batch.map((one) => JSON.stringify(one.event)).join('\n'),
        });
        said = answer.ok ? await answer.json() : null;
      } catch {
        this.lost();
        return this.later();
      }
      if (!said) {
        await this.refused(answer);
        return this.later();
      }
      this.answered(losses);
      await this.heardBack(said);
      sent = true;
      if (said.kept.length === 0 && said.refused.length === 0 && said.gaps.length === 0) return this.later();
    }
    if (sent) {
      this.refreshLater();
      this.hear();
    }
    return undefined;
  }

  async heardBack(said) {
    const { job } = this.page;
    const seqs = (ids) => this.mine.filter((one) => ids.includes(one.event.id)).map((one) => one.seq);
    await shelf.mark(job, seqs(said.kept), { sent: true });
    for (const one of said.refused) await shelf.mark(job, seqs([one.id]), { refused: one.because });
    for (const gap of said.gaps.filter((one) => one.device === this.page.device)) {
      // The garage lost what it had, as after a restored backup: it is sent again.
      await shelf.mark(job, this.mine.filter((one) => one.seq >= gap.from && one.seq <= gap.to).map((one) => one.seq), { sent: false });
    }
    this.mine = await shelf.own(job);
    this.trouble = said.refused.length
      ? 'The garage’s books do not take ' + said.refused.length + ' of the steps: ' + said.refused[0].because + '. Write it down again.'
      : '';
    this.wait = FIRST_WAIT;
    this.tellTime(said.now);
    this.page.told('net');
  }

  later() {
    this.timer = setTimeout(() => this.flush(), this.wait);
    this.wait = Math.min(LONGEST_WAIT, this.wait * 2);
    return undefined;
  }

  follow() {
    this.stream?.close();
    this.stream = new EventSource(this.base + '/events/stream?since=' + this.theirs.length);
    this.stream.addEventListener('did', (message) => this.heardOf(JSON.parse(message.data)));
    this.stream.addEventListener('job', () => this.refreshLater());
    this.stream.onopen = () => {
      this.reached = true;
      this.page.told('net');
      this.flush();
    };
    this.stream.onerror = () => {
      if (this.stream.readyState === EventSource.CLOSED) setTimeout(() => this.again(), 5000);
    };
  }

  /** Somebody did something; what is owed and the order of the steps are asked for a moment later. */
  heardOf(event) {
    const before = this.theirs.length;
    this.take(event);
    if (this.theirs.length === before) return;
    this.page.told('events');
    this.refreshLater();
  }

  /** Not for each of many steps that follow one another. */
  refreshLater() {
    clearTimeout(this.refreshing);
    this.refreshing = setTimeout(() => this.refresh(), 400);
  }

  /** Whether what the garage reckons is about all that is known here. */
  get fresh() {
    return this.reached && this.unsent.length === 0 && this.data.last === this.events.length;
  }

  tellTime(now) {
    this.skew = Math.round((Date.now() - Date.parse(now)) / 1000);
  }

  /** Whether this device's clock is too far off to believe its times. */
  get clockIsWrong() {
    return Math.abs(this.skew) > SKEW && !this.data?.inventedTime;
  }

  said() {
    return new URLSearchParams({
      device: this.page.device, by: this.page.by(), unsent: this.unsent.length, clock: new Date().toISOString(),
    });
  }

  /** Tells the garage that this device is there, and how much it holds back. */
  hear() {
    fetch(this.base + '/heard', { method: 'POST', body: this.said() }).catch(() => {});
  }

  leave() {
    navigator.sendBeacon?.(this.base + '/heard', this.said());
  }
}
