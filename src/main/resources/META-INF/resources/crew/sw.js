/*
 * Keeps the page of the steps on the phone, so that it opens without a connection. From the store first, so that a bad line
 * never holds it up; what is newer is fetched beside that and shown at the next opening. Data are the page's own affair.
 */
const STORE = 'drylap-crew';
const PAGE = ['/crew/steps.html', '/crew/steps.css', '/crew/steps.js'];

self.addEventListener('install', (event) => {
  event.waitUntil(Promise.all(PAGE.map((path) => fetched(path))).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const address = new URL(event.request.url);
  const ours = address.origin === self.location.origin && address.pathname.startsWith('/crew/');
  // "?enter" asks for the sign-in page, which only the server has
  if (event.request.method !== 'GET' || !ours || address.search !== '') return;
  event.respondWith(kept(event, address.pathname));
});

async function kept(event, path) {
  const had = await (await caches.open(STORE)).match(path);
  const fresh = fetched(path);
  if (!had) return fresh;
  event.waitUntil(fresh.catch(() => undefined));
  return had;
}

/** The sign-in page comes in the place of ours when nobody is signed in; that one is never kept. */
async function fetched(path) {
  const answer = await fetch(path);
  if (!answer.ok || answer.redirected) throw new Error(`${path}: ${answer.status}`);
  await (await caches.open(STORE)).put(path, answer.clone());
  return answer;
}
