// What the page needs of the browser and .NET cannot reach by itself. No state but the worker, the database and the listeners.

let worker;

/** Starts a worker in place of the one there is; what that one was doing is dropped. */
export function startWorker(desk) {
    worker?.terminate();
    worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }) => {
        if (data.ready) desk.invokeMethodAsync('OnReady');
        else if (data.reply !== undefined) desk.invokeMethodAsync('OnReply', data.id, data.reply);
        else if (data.share !== undefined) desk.invokeMethodAsync('OnProgress', data.id, data.share);
        else desk.invokeMethodAsync('OnDone', data.id, data.done);
    };
    worker.onerror = () => desk.invokeMethodAsync('OnFailed');
}

export function ask(id, question) {
    worker.postMessage({ id, question });
}

/** Tells those who wait for it that the page is drawn. */
export function ready() {
    window.dispatchEvent(new Event('page-ready'));
}

/** Where the person is: the fragment, which is never sent anywhere. */
export function listen(page) {
    window.addEventListener('hashchange', () => page.invokeMethodAsync('OnFragment', location.hash.slice(1)));
    window.addEventListener('keydown', event => {
        const isText = event.target.closest?.('textarea, input[type=text]');
        if ((event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z' && !isText) {
            event.preventDefault();
            page.invokeMethodAsync('OnUndo', event.shiftKey);
        }
    });
    window.addEventListener('update-ready', () => page.invokeMethodAsync('OnUpdateReady'));
    if (document.documentElement.dataset.update) page.invokeMethodAsync('OnUpdateReady');
    return location.hash.slice(1);
}

export function setFragment(fragment) {
    history.replaceState(null, '', '#' + fragment);
}

export function pageAddress() {
    return location.href.split('#')[0];
}

export function applyUpdate() {
    navigator.serviceWorker?.getRegistration().then(registration => {
        if (!registration?.waiting) { location.reload(); return; }
        navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
        registration.waiting.postMessage('take-over');
    });
}

/** Light, dark, or what the device says; the language of the page. */
export function setLook(theme, language) {
    const root = document.documentElement;
    if (theme) root.dataset.theme = theme; else delete root.dataset.theme;
    root.lang = language;
}

export function focusOn(id) {
    const element = document.getElementById(id);
    if (!element) return;
    for (let up = element.parentElement; up; up = up.parentElement) if (up.tagName === 'DETAILS') up.open = true;
    element.scrollIntoView({ block: 'center' });
    element.focus({ preventScroll: true });
}

export function toTop() {
    window.scrollTo(0, 0);
}

/** Saves a text as a file of the person's own. */
export function save(name, type, text) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

export async function copy(text) {
    try { await navigator.clipboard.writeText(text); return true; } catch { return false; }
}

export function print() {
    window.print();
}

/** The device's own position, only when the person asked for it. */
export function position() {
    return new Promise(resolve => {
        if (!navigator.geolocation) { resolve(null); return; }
        navigator.geolocation.getCurrentPosition(
            ({ coords }) => resolve([coords.latitude, coords.longitude, coords.altitude]),
            () => resolve(null),
            { enableHighAccuracy: false, timeout: 15_000, maximumAge: 600_000 });
    });
}

/** How steeply the device lies and which way it faces, laid on a panel: [tilt, azimuth or null], or null where there are no sensors. */
export async function facing() {
    const sensors = window.DeviceOrientationEvent;
    if (!sensors) return null;
    if (sensors.requestPermission && await sensors.requestPermission().catch(() => 'denied') !== 'granted') return null;
    return await new Promise(resolve => {
        const listen = event => {
            if (event.beta === null) return;
            stop();
            const beta = event.beta * Math.PI / 180, gamma = event.gamma * Math.PI / 180;
            const tilt = Math.acos(Math.max(-1, Math.min(1, Math.cos(beta) * Math.cos(gamma)))) * 180 / Math.PI;
            const north = event.webkitCompassHeading ?? (event.absolute ? 360 - event.alpha : null);
            resolve([tilt, north === null ? null : (north + 180) % 360]);
        };
        const stop = () => { clearTimeout(timer); removeEventListener('deviceorientationabsolute', listen); removeEventListener('deviceorientation', listen); };
        const timer = setTimeout(() => { stop(); resolve(null); }, 3_000);
        addEventListener('deviceorientationabsolute', listen);
        addEventListener('deviceorientation', listen);
    });
}

// ----- the device's own database: plans with their versions, and settings -----

let opened;

function database() {
    return opened ??= new Promise((resolve, reject) => {
        const request = indexedDB.open('arraywright', 1);
        request.onupgradeneeded = () => {
            request.result.createObjectStore('settings');
            request.result.createObjectStore('versions', { keyPath: 'at' });
        };
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
    });
}

async function inStore(store, mode, use) {
    const base = await database();
    return await new Promise((resolve, reject) => {
        const change = base.transaction(store, mode, { durability: 'strict' });
        const request = use(change.objectStore(store));
        change.oncomplete = () => resolve(request?.result);
        change.onerror = change.onabort = () => reject(change.error);
    });
}

/** All that is kept, newest first; an empty list where the browser keeps nothing (a private window). */
export async function versions() {
    try {
        const all = await inStore('versions', 'readonly', store => store.getAll());
        return all.reverse();
    } catch { return []; }
}

/** Keeps a version; one written within a minute of the last, of the same plan, takes its place. At most so many are kept. */
export async function keep(title, text, most) {
    try {
        const all = await versions();
        const last = all[0];
        if (last?.text === text) return true;
        const at = Math.max(Date.now(), (last?.at ?? 0) + 1);
        if (last && last.title === title && at - last.at < 60_000) await inStore('versions', 'readwrite', store => store.delete(last.at));
        await inStore('versions', 'readwrite', store => store.put({ at, title, text }));
        for (const old of all.slice(most)) await inStore('versions', 'readwrite', store => store.delete(old.at));
        return true;
    } catch { return false; }
}

export async function forget() {
    try { await inStore('versions', 'readwrite', store => store.clear()); } catch { /* nothing was kept */ }
}

export async function setting(name) {
    try { return await inStore('settings', 'readonly', store => store.get(name)) ?? null; } catch { return null; }
}

export async function setSetting(name, value) {
    try { await inStore('settings', 'readwrite', store => store.put(value, name)); } catch { /* kept for this visit only */ }
}

export function when(at) {
    return new Date(at).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' });
}
