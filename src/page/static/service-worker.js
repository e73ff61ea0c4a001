// Keeps the page on the device. The list of files and the version, which is made from their
// content, are put in when the page is built.
const BUILT = "what was built";

// Two copies of the page under one origin have one store of caches: the scope keeps them apart.
const FAMILY = `kettle-and-barrel ${self.registration.scope} `;
const CACHE = FAMILY + BUILT.version;

const addresses = new Set(BUILT.files.map((file) => new URL(file, self.registration.scope).href));

// All files or none: with one missing, the version before goes on, and nothing is left of this one.
self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(CACHE);
    try {
      await cache.addAll(BUILT.files.map((file) => new Request(file, { cache: "reload" })));
    } catch (missing) {
      await caches.delete(CACHE);
      throw missing;
    }
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith(FAMILY) && name !== CACHE) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

// Our own files come from the cache first; anything else is none of the worker's business.
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  url.search = "";
  url.hash = "";
  if (url.href === new URL("index.html", self.registration.scope).href) url.pathname = url.pathname.replace(/index\.html$/, "");
  if (event.request.method !== "GET" || !addresses.has(url.href)) return;
  event.respondWith((async () => {
    const cache = await caches.open(CACHE);
    return (await cache.match(url.href)) ?? fetch(event.request);
  })());
});

// A new version waits until the person at the page asks for it.
self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});
