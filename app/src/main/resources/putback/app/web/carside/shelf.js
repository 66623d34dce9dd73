// What lies on this device: jobs as they were last heard, and every event that was written down here.

const NAME = 'putback-carside';

/** Said when the device cannot keep anything more. */
export class Full extends Error {}

let opened = null;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      const base = request.result;
      base.createObjectStore('jobs', { keyPath: 'job' });
      base.createObjectStore('own', { keyPath: ['job', 'seq'] });
      base.createObjectStore('about', { keyPath: 'name' });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return opened;
}

/** Does some work in one transaction; what it returns counts once all of it is kept. */
async function within(stores, mode, work) {
  const base = await open();
  return new Promise((resolve, reject) => {
    const change = base.transaction(stores, mode, { durability: 'strict' });
    let result;
    change.oncomplete = () => resolve(result);
    change.onabort = () => {
      const fault = change.error;
      reject(fault?.name === 'QuotaExceededError' ? new Full() : fault ?? new Error('not kept'));
    };
    work(change, (value) => { result = value; });
  });
}

/** The name of this device, made up once. */
export function device() {
  return within(['about'], 'readwrite', (change, done) => {
    const about = change.objectStore('about');
    about.get('device').onsuccess = (event) => {
      const kept = event.target.result?.value;
      const name = kept ?? crypto.randomUUID().replaceAll('-', '').slice(0, 12);
      if (!kept) about.put({ name: 'device', value: name });
      done(name);
    };
  });
}

const ofJob = (job) => IDBKeyRange.bound([job, 0], [job, Infinity]);

/**
 * Writes events down, with the next running numbers of this device. They are kept when it returns, or none is.
 */
export function write(job, name, all) {
  return within(['own'], 'readwrite', (change, done) => {
    const own = change.objectStore('own');
    own.openKeyCursor(ofJob(job), 'prev').onsuccess = (event) => {
      let seq = event.target.result ? event.target.result.key[1] : 0;
      const kept = all.map((fields) => {
        seq++;
        const signed = { id: name + '-' + seq, at: new Date().toISOString(), device: name, seq, ...fields };
        own.add({ job, seq, event: signed, sent: false });
        return signed;
      });
      done(kept);
    };
  });
}

/** All that was written down here for a job, in its order: {seq, event, sent, refused}. */
export function own(job) {
  return within(['own'], 'readonly', (change, done) => {
    change.objectStore('own').getAll(ofJob(job)).onsuccess = (event) => done(event.target.result);
  });
}

/** Notes what the garage said to some of them. */
export function mark(job, seqs, said) {
  return within(['own'], 'readwrite', (change) => {
    const store = change.objectStore('own');
    for (const seq of seqs) {
      store.get([job, seq]).onsuccess = (event) => {
        if (event.target.result) store.put({ ...event.target.result, ...said });
      };
    }
  });
}

/** The job as it was last heard: {job, data, events}. */
export function job(id) {
  return within(['jobs'], 'readonly', (change, done) => {
    change.objectStore('jobs').get(id).onsuccess = (event) => done(event.target.result ?? null);
  });
}

/** Keeps it. */
export function keep(id, data, events) {
  return within(['jobs'], 'readwrite', (change) => {
    change.objectStore('jobs').put({ job: id, data, events });
  });
}
