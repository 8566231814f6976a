// The engine runs in workers, so that typing never waits for it: "quick" looks, "deep" works out everything.
const workers = {};

function worker(name) {
  if (workers[name]) return workers[name];
  const made = { asked: new Map(), last: 0, worker: new Worker(new URL('./engine-worker.js', import.meta.url), { type: 'module', name }) };
  made.worker.onmessage = ({ data }) => {
    const waiting = made.asked.get(data.id);
    made.asked.delete(data.id);
    if (waiting) data.fault ? waiting.reject(new Error(data.fault)) : waiting.resolve(data.answer);
  };
  made.worker.onerror = event => {
    for (const waiting of made.asked.values()) waiting.reject(new Error(event.message || 'The engine stopped.'));
    made.asked.clear();
    delete workers[name];
  };
  return workers[name] = made;
}

function request(name, what, args) {
  const to = worker(name);
  return new Promise((resolve, reject) => {
    const id = ++to.last;
    to.asked.set(id, { resolve, reject });
    to.worker.postMessage({ id, what, args });
  });
}

export const ask = (name, what, args) => request(name, what, args);

const kinds = { zip: 'application/zip', ics: 'text/calendar', pdf: 'application/pdf', geojson: 'application/geo+json', glb: 'model/gltf-binary' };

export async function download(what, args, fileName) {
  const bytes = await request('deep', what, args);
  if (bytes.length === 0) return false;
  const { save } = await import('./page.js');
  save(new Blob([bytes], { type: kinds[fileName.split('.').pop()] }), fileName);
  return true;
}
