// The worker that computes. It is begun with the first sight of the page: it takes longest to be there, and keeps nobody waiting.
let worker;
let isReady = false;
let isTaken = false;
let listener;
let tookMs;

function begin() {
    worker?.terminate();
    isReady = false;
    const from = performance.now();
    worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }) => {
        if (data.ready) [isReady, tookMs] = [true, performance.now() - from];
        listener?.(data.ready ? { ready: tookMs } : data);
    };
    worker.onerror = () => {
        if (listener) listener({ failed: true });
        else worker = undefined;
    };
}

/** Begins it, for whoever will ask. */
export function prepare() {
    if (!worker) begin();
}

/** Takes the one prepared, the first time; afterwards a new one, and what the old one was doing is dropped. Hears when it is ready, with the ms that took, and all it says. */
export function take(heard) {
    listener = heard;
    if (isTaken || !worker) begin();
    else if (isReady) heard({ ready: tookMs });
    isTaken = true;
}

export function post(message) {
    worker.postMessage(message);
}
