// What the page needs of the browser and .NET cannot reach by itself. No state but the listeners.
import { post, take } from './desk.js';
import { setSetting } from './kept.js';
export * from './kept.js';
export { handOver } from './start.js';

/** Above a year of minutes, bytes. */
const mostWeather = 64 << 20;

/** Starts a worker in place of the one there is; what that one was doing is dropped. */
export function startWorker(desk) {
    take(data => {
        if (data.ready) desk.invokeMethodAsync('OnReady', data.ready);
        else if (data.failed) desk.invokeMethodAsync('OnFailed');
        else if (data.reply !== undefined) desk.invokeMethodAsync('OnReply', data.id, data.reply);
        else if (data.share !== undefined) desk.invokeMethodAsync('OnProgress', data.id, data.share);
        else desk.invokeMethodAsync('OnDone', data.id);
    });
}

export function ask(id, question) {
    post({ id, question });
}

/** Nobody waits any more for what is left of the answer to a question. */
export function drop(id) {
    post({ drop: id });
}

/** Keeps the weather file chosen in a field and gives it to the worker; its name, or nothing where it is none or too large. */
export async function takeWeather(id) {
    const file = document.getElementById(id)?.files[0];
    if (!file || file.size > mostWeather) return null;
    const bytes = new Uint8Array(await file.arrayBuffer());
    await setSetting('weather/' + file.name, bytes);
    post({ weather: file.name, bytes });
    return file.name;
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

export function when(at) {
    return new Date(at).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' });
}
