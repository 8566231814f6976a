// Keeps every file of this version on the device, so that all of it works without a network after the first visit.
self.importScripts('./service-worker-assets.js');

const prefix = 'hoopwright-', current = prefix + self.assetsManifest.version;
const left = [/^service-worker\.js$/, /\.br$/, /\.gz$/, /\.map$/];
const files = self.assetsManifest.assets.filter(asset => !left.some(pattern => pattern.test(asset.url)));
const known = new Set(files.map(asset => new URL(asset.url, self.location).href));

self.addEventListener('install', event => event.waitUntil((async () => {
  const cache = await caches.open(current);
  await cache.addAll(files.map(asset => new Request(asset.url, { integrity: asset.hash, cache: 'no-cache' })));
  await self.skipWaiting();
})()));

self.addEventListener('activate', event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith(prefix) && name !== current) await caches.delete(name);
  await self.clients.claim();
})()));

self.addEventListener('fetch', event => {
  if (event.request.method !== 'GET' || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith((async () => {
    const cache = await caches.open(current);
    const isPage = event.request.mode === 'navigate' && !known.has(event.request.url);
    return await cache.match(isPage ? 'index.html' : event.request, { ignoreSearch: true }) ?? fetch(event.request);
  })());
});
