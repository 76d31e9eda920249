// Before anything else: the look the person chose, and the service worker that makes the page work with no signal.
import { setting } from './kept.js';

setting('theme').then(theme => { if (theme) document.documentElement.dataset.theme = theme; });

// Only once the page is there: what the worker fetches must not keep it waiting.
if ('serviceWorker' in navigator) window.addEventListener('page-ready', () => {
    const ready = () => {
        document.documentElement.dataset.update = 'ready';
        window.dispatchEvent(new Event('update-ready'));
    };
    navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' }).then(registration => {
        if (registration.waiting && navigator.serviceWorker.controller) ready();
        registration.addEventListener('updatefound', () => {
            const coming = registration.installing;
            coming?.addEventListener('statechange', () => {
                if (coming.state === 'installed' && navigator.serviceWorker.controller) ready();
            });
        });
    }).catch(() => { /* without it the page works while there is a signal */ });
}, { once: true });
