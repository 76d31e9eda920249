// The device's own database: plans with their versions, settings, weather files. The page and its worker both use it.

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
    try {
        await inStore('versions', 'readwrite', store => store.clear());
        await inStore('settings', 'readwrite', store => store.delete(IDBKeyRange.bound('weather/', 'weather/\uffff')));
    } catch { /* nothing was kept */ }
}

export async function setting(name) {
    try { return await inStore('settings', 'readonly', store => store.get(name)) ?? null; } catch { return null; }
}

export async function setSetting(name, value) {
    try { await inStore('settings', 'readwrite', store => store.put(value, name)); } catch { /* kept for this visit only */ }
}
