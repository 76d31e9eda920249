// The start screen stands in index.html, to be read and typed into at once. The runtime, which keeps a slow device busy for seconds, is begun at the first
// sign of a person, or at once for one who comes back; what was typed, chosen or pressed meanwhile is handed over to it.
import { prepare } from './desk.js';
import { setting, versions } from './kept.js';

const signs = ['pointermove', 'pointerdown', 'touchstart', 'wheel', 'scroll', 'keydown', 'focusin'];
const first = document.getElementById('first');
const opening = document.getElementById('opening');
const pressable = root => [...root.querySelectorAll('a, button')];
// This runtime draws and does not compute: compiling its loops is what would keep the page from answering.
const plain = ['--no-jiterpreter-traces-enabled', '--no-jiterpreter-interp-entry-enabled', '--no-jiterpreter-jit-call-enabled'];
let isBegun = false;
let pressed = -1;

function begin() {
    if (isBegun) return;
    isBegun = true;
    const script = document.createElement('script');
    script.src = '_framework/blazor.webassembly.js';
    script.setAttribute('autostart', 'false');
    script.onload = () => Blazor.start({ configureRuntime: runtime => runtime.withRuntimeOptions(plain) });
    document.body.append(script);
}

function wait() {
    opening.hidden = false;
    begin();
}

for (const sign of signs) addEventListener(sign, begin, { capture: true, passive: true, once: true });
first.addEventListener('change', event => { if (event.target.type === 'file') wait(); });
first.addEventListener('click', event => {
    const at = pressable(first).indexOf(event.target.closest('a, button'));
    if (at < 0) return;
    event.preventDefault();
    pressed = at;
    wait();
});

addEventListener('load', prepare, { once: true });
setting('theme').then(theme => { if (theme) document.documentElement.dataset.theme = theme; });
Promise.all([versions(), setting('language')]).then(([kept, language]) => {
    if (kept.length === 0 && (language ?? 'en') === 'en' && location.hash.length < 2) return;
    first.classList.add('is-past');
    wait();
});

/** Puts the page in the place of the first screen, with all that was done there. */
export function handOver() {
    if (!first.isConnected) return;
    const app = document.getElementById('app');
    const { activeElement } = document;
    const isInside = first.contains(activeElement);
    first.remove();
    opening.remove();
    app.hidden = false;
    if (isInside) document.getElementById(activeElement.id)?.focus();

    // Not within the call that the runtime waits for.
    setTimeout(() => {
        for (const field of first.querySelectorAll('input')) {
            const now = document.getElementById(field.id);
            if (!now) continue;
            if (field.files?.length) {
                now.files = field.files;
                now.dispatchEvent(new Event('change', { bubbles: true }));
            } else if (field.type !== 'file' && field.value) {
                now.value = field.value;
                now.dispatchEvent(new Event('input', { bubbles: true }));
            }
        }
        if (pressed >= 0) pressable(app)[pressed]?.click();
    });
}

// The service worker makes the page work with no signal. What it fetches must not keep a person waiting.
function keepOffline() {
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
}

if ('serviceWorker' in navigator) {
    addEventListener('page-ready', keepOffline, { once: true });
    addEventListener('load', () => setTimeout(() => { if (!isBegun) keepOffline(); }, 1_000));
}
