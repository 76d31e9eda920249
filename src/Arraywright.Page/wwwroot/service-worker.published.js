// Keeps every file of this build, so that the page works with no signal. A new build is fetched whole, and waits until the person takes it.
self.importScripts('./service-worker-assets.js');

const prefix = 'arraywright-';
const cacheName = prefix + self.assetsManifest.version;
const kept = [/\.dll$/, /\.wasm$/, /\.html$/, /\.js$/, /\.css$/, /\.json$/, /\.svg$/, /\.png$/, /\.dat$/, /\.webmanifest$/];
const left = [/^service-worker\.js$/];

self.addEventListener('install', event => event.waitUntil((async () => {
    const files = self.assetsManifest.assets
        .filter(asset => kept.some(pattern => pattern.test(asset.url)) && !left.some(pattern => pattern.test(asset.url)))
        .map(asset => new Request(asset.url, { integrity: asset.hash, cache: 'no-cache' }));
    await (await caches.open(cacheName)).addAll(files);
})()));

self.addEventListener('activate', event => event.waitUntil((async () => {
    for (const name of await caches.keys()) {
        if (name.startsWith(prefix) && name !== cacheName) await caches.delete(name);
    }
    await self.clients.claim();
})()));

self.addEventListener('message', event => {
    if (event.data === 'take-over') self.skipWaiting();
});

self.addEventListener('fetch', event => {
    const address = new URL(event.request.url);
    if (event.request.method !== 'GET' || address.origin !== self.location.origin || address.pathname.includes('/api/')) return;
    event.respondWith((async () => {
        const cache = await caches.open(cacheName);
        const asked = event.request.mode === 'navigate' ? 'index.html' : event.request;
        return await cache.match(asked, { ignoreSearch: true }) ?? await fetch(event.request);
    })());
});
