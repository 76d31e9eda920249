// While developing there is no cache: what was just built is what is shown. The published page has service-worker.published.js.
self.addEventListener('fetch', () => { });
