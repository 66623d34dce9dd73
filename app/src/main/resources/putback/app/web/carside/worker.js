// Keeps the page at the car and its files, so that it opens without a network. What was done never goes through here.

const CACHE = 'putback-carside-3';
const WAIT = 2500;
const STILL_LATE = 30000;
let lateAt = 0;
const FILES = [
  '/page.css', '/mark.svg', '/carside/carside.css',
  ...['main', 'make', 'shelf', 'sync', 'fold', 'card', 'parts', 'panels', 'resorts', 'ladder', 'done', 'device', 'pay', 'standing', 'broken'].map((name) => '/carside/' + name + '.js'),
];

addEventListener('install', (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(FILES)).then(() => skipWaiting()));
});

addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith('putback-carside') && name !== CACHE) await caches.delete(name);
    }
    await clients.claim();
  })());
});

addEventListener('fetch', (event) => {
  const { pathname, origin } = new URL(event.request.url);
  const isPage = /^\/job\/[^/]+\/carside$/.test(pathname);
  if (event.request.method === 'GET' && origin === location.origin && (isPage || FILES.includes(pathname))) {
    event.respondWith(newest(event.request, pathname));
  }
});

/** From the network where it answers in time, else as it was kept. */
async function newest(request, key) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(key);
  const fresh = fetch(request).then(async (answer) => {
    if (answer.ok && !answer.redirected) await cache.put(key, answer.clone());
    return answer;
  });
  if (!kept) return fresh;
  fresh.catch(() => {});
  // Where the network swallows everything one file waits, not each of them.
  const wait = Date.now() - lateAt < STILL_LATE ? 0 : WAIT;
  const late = new Promise((resolve) => {
    setTimeout(() => { lateAt ||= Date.now(); resolve(kept); }, wait);
  });
  fresh.then(() => { lateAt = 0; }, () => {});
  return Promise.race([fresh, late]).catch(() => kept);
}
