// What the device can do for the hand that is busy: stay awake, read aloud, open without a network, know a name.

const CACHE = 'putback-carside-3';
const NAME = 'putback-name';

/** Who is signed in; empty where nobody signs in. */
export function signedIn() {
  return document.body.dataset.me ?? '';
}

/** Who works with this device: whoever is signed in, else whoever said so; empty where nobody did. */
export function name() {
  return signedIn() || (localStorage.getItem(NAME) ?? '');
}

export function setName(words) {
  localStorage.setItem(NAME, words);
}

/** Has the page kept, so that it opens without a network. */
export async function prepare() {
  if (!navigator.serviceWorker) return;
  try {
    await navigator.serviceWorker.register('/carside/worker.js', { scope: '/job/' });
    await navigator.serviceWorker.ready;
    await (await caches.open(CACHE)).add(location.pathname);
    document.documentElement.dataset.kept = 'yes';
    await navigator.storage?.persist?.();
  } catch {
    document.documentElement.dataset.kept = 'no';
  }
}

let lock = null;

/** The screen stays on while the page is looked at, where the device can do that. */
export async function stayAwake() {
  if (!navigator.wakeLock || document.hidden) return;
  try {
    lock = await navigator.wakeLock.request('screen');
    lock.addEventListener('release', () => { lock = null; });
  } catch {
    lock = null;
  }
}

document.addEventListener('visibilitychange', () => {
  if (!document.hidden && !lock) stayAwake();
});

/** Whether it can speak. */
export const speaks = 'speechSynthesis' in window;

/** Reads aloud, or stops when it is reading. */
export function read(sentences) {
  if (speechSynthesis.speaking) {
    speechSynthesis.cancel();
    return;
  }
  for (const sentence of sentences.filter(Boolean)) {
    const words = new SpeechSynthesisUtterance(said(sentence));
    words.lang = 'en';
    words.rate = 0.95;
    speechSynthesis.speak(words);
  }
}

/** Units as they are spoken. */
export function said(sentence) {
  return sentence
    .replace(/N·m/g, 'newton metres')
    .replace(/lbf·ft/g, 'pound feet')
    .replace(/(\d) mm\b/g, '$1 millimetres')
    .replace(/\bM(\d+)x([\d.]+)/g, 'M $1 by $2')
    .replace(/°/g, ' degrees');
}
