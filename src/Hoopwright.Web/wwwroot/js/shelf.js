// The shelf: plans and their history in the browser's own database. Every change is one transaction on the plan as it is
// stored at that moment, so that two tabs cannot overwrite each other; tabs tell each other of changes.
// When the browser keeps nothing (private mode, storage refused), the shelf lives in memory and says so.
const name = 'hoopwright', version = 1;
const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('hoopwright-plans') : null;
const memory = { plans: new Map(), history: [] };
// What this page was last told of each plan: what it knows already is not told again.
const known = new Map();
let opened, why = '', cause = '';

function open() {
  return opened ??= new Promise(resolve => {
    let request;
    const refuse = (kind, said) => { cause = kind; why = said; resolve(null); };
    try { request = indexedDB.open(name, version); } catch (fault) { refuse('refused', String(fault?.message ?? fault)); return; }
    request.onupgradeneeded = () => {
      const database = request.result;
      database.createObjectStore('plans', { keyPath: 'id' });
      database.createObjectStore('history', { keyPath: ['plan', 'step'] });
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => { request.result.close(); opened = undefined; };
      resolve(request.result);
    };
    request.onerror = () => refuse(request.error?.name === 'VersionError' ? 'newer' : 'refused', String(request.error?.message ?? ''));
    request.onblocked = () => refuse('blocked', '');
  });
}

export async function state() {
  const database = await open();
  let persisted = false;
  try { persisted = database && await navigator.storage?.persist?.() || false; } catch { /* only a wish */ }
  return { keeps: !!database, persisted, cause, why };
}

const done = request => new Promise((resolve, reject) => { request.onsuccess = () => resolve(request.result); request.onerror = () => reject(request.error); });

// Runs work over the two stores in one transaction; in memory when there is no database.
async function within(work) {
  const database = await open();
  if (!database) return work(memoryStores());
  const transaction = database.transaction(['plans', 'history'], 'readwrite');
  const finished = new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = () => reject(transaction.error ?? new Error('The browser gave the change up.'));
  });
  const plans = transaction.objectStore('plans'), history = transaction.objectStore('history');
  let answer;
  try {
    answer = await work({
      plan: id => done(plans.get(id)),
      all: () => done(plans.getAll()),
      put: plan => done(plans.put(plan)),
      drop: async id => { await done(plans.delete(id)); await done(history.delete(IDBKeyRange.bound([id, 0], [id, Infinity]))); },
      step: (id, step) => done(history.get([id, step])),
      keep: step => done(history.put(step)),
      forget: (id, from) => done(history.delete(IDBKeyRange.bound([id, from], [id, Infinity]))),
    });
  } catch (fault) {
    try { transaction.abort(); } catch { /* over already */ }
    await finished.catch(() => {});
    throw fault;
  }
  await finished;
  return answer;
}

function memoryStores() {
  const of = id => memory.history.filter(step => step.plan === id);
  return {
    plan: async id => structuredClone(memory.plans.get(id)),
    all: async () => [...memory.plans.values()].map(plan => structuredClone(plan)),
    put: async plan => { memory.plans.set(plan.id, structuredClone(plan)); },
    drop: async id => { memory.plans.delete(id); memory.history = memory.history.filter(step => step.plan !== id); },
    step: async (id, step) => of(id).find(each => each.step === step),
    keep: async step => { memory.history = memory.history.filter(each => each.plan !== step.plan || each.step !== step.step); memory.history.push(step); },
    forget: async (id, from) => { memory.history = memory.history.filter(each => each.plan !== id || each.step < from); },
  };
}

// A failure is an answer, not an exception: the page says what happened and offers to save the work as a file.
async function tried(work) {
  try { return { ok: true, ...(await within(work)) }; } catch (fault) {
    return { ok: false, fault: fault?.name === 'QuotaExceededError' ? 'full' : 'failed', message: String(fault?.message ?? fault) };
  }
}

// The plan that is open is not on the shelf any more: removed in another tab, or the database went away under it.
const gone = () => ({ ok: false, found: false, fault: cause || 'gone', message: why });

const told = (plan, by) => channel?.postMessage({ plan, by });

export const list = () => tried(async stores => ({
  plans: (await stores.all()).map(({ id, name, changed, document }) => ({ id, name: typeof name === 'string' ? name : '', changed: Number(changed) || 0, sound: sound(document) }))
    .sort((a, b) => b.changed - a.changed),
}));

function sound(text) {
  try { const plan = JSON.parse(text); return plan !== null && typeof plan === 'object' && !Array.isArray(plan); } catch { return false; }
}

// For the page that goes on to change the plan: from here on it is told only what it does not know.
export const load = (id, isOpening) => tried(async stores => {
  const plan = await stores.plan(id);
  if (!plan) return { found: false };
  if (isOpening) known.set(id, plan.turn ?? 0);
  return { found: true, ...view(plan) };
});

const view = plan => ({ document: String(plan.document ?? ''), ...where(plan) });

const where = plan => ({ name: String(plan.name ?? ''), at: plan.at ?? 0, of: plan.of ?? 0 });

export async function add(id, name, document, now) {
  const answer = await tried(async stores => {
    await stores.put({ id, name, document, changed: now, at: 0, of: 0 });
    return {};
  });
  if (answer.ok) told(id, null);
  return answer;
}

export async function remove(id) {
  const answer = await tried(async stores => { await stores.drop(id); return {}; });
  if (answer.ok) told(id, null);
  return answer;
}

// One edit: the value at a path, as JSON, or null to leave the field out. It is applied to the plan as it is stored now. Where
// that is the plan that the page knows, with its own edits on it, the answer is that it still is.
export async function change(id, path, value, now, by) {
  let turn;
  const answer = await tried(async stores => {
    const plan = await stores.plan(id);
    if (!plan) return gone();
    const isKnown = known.get(id) === (plan.turn ?? 0);
    const before = JSON.parse(plan.document);
    const section = path.split(/[.[]/)[0];
    // Entries of the site book are only ever added, so that there is nothing to take back; what other copies brought would go with it.
    const isStep = section !== 'siteBook';
    const kept = isStep ? textOf(before[section]) : null;
    // One more entry goes behind those that another tab added meanwhile.
    const wanted = value === null ? undefined : JSON.parse(value);
    if (wanted !== undefined && /^siteBook\[\d+\]$/.test(path) && Array.isArray(before.siteBook)) before.siteBook.push(wanted);
    else place(before, path, wanted);
    const after = isStep ? textOf(before[section]) : null;
    if (!isStep || kept !== after) {
      plan.document = JSON.stringify(before);
      plan.name = typeof before.name === 'string' ? before.name : '';
      plan.changed = now;
      plan.turn = (plan.turn ?? 0) + 1;
      if (isStep) {
        await stores.forget(id, plan.at + 1);
        // Letters typed one after another into one field are one step to take back.
        const last = plan.at > 0 ? await stores.step(id, plan.at) : null;
        const goesOn = last && last.path === path && last.by === by && now - last.at < 2000;
        if (!goesOn) plan.at += 1;
        plan.of = plan.at;
        await stores.keep({ plan: id, step: plan.at, path, section, before: goesOn ? last.before : kept, after, at: now, by });
      }
      await stores.put(plan);
    }
    turn = plan.turn ?? 0;
    return { found: true, ...(isKnown ? { same: true, ...where(plan) } : view(plan)) };
  });
  if (answer.ok) {
    known.set(id, turn);
    told(id, by);
  }
  return answer;
}

const textOf = value => value === undefined ? null : JSON.stringify(value);

// One step back or forward in the history.
export async function turn(id, back, now, by) {
  let turned;
  const answer = await tried(async stores => {
    const plan = await stores.plan(id);
    if (!plan) return gone();
    const step = await stores.step(id, back ? plan.at : plan.at + 1);
    if (!step || (!back && plan.at >= plan.of)) return { found: true, ...view(plan) };
    const document = JSON.parse(plan.document), value = back ? step.before : step.after;
    if (value === null) delete document[step.section];
    else document[step.section] = JSON.parse(value);
    plan.document = JSON.stringify(document);
    plan.name = typeof document.name === 'string' ? document.name : '';
    plan.at += back ? -1 : 1;
    plan.changed = now;
    plan.turn = turned = (plan.turn ?? 0) + 1;
    await stores.put(plan);
    return { found: true, path: step.path, ...view(plan) };
  });
  if (answer.ok) {
    if (turned) known.set(id, turned);
    told(id, by);
  }
  return answer;
}

export function watch(page, by) {
  if (channel) channel.onmessage = ({ data }) => { if (data.by !== by) page.invokeMethodAsync('PlanChangedElsewhere', data.plan); };
}

// Sets or removes the value at a path such as ends.front.doors[0].width; groups are made on the way and empty ones go again.
export function place(root, path, value) {
  const steps = [...path.matchAll(/[^.[\]]+|\[(\d+)\]/g)].map(match => match[1] === undefined ? match[0] : Number(match[1]));
  put(root, steps, value);
}

function put(node, steps, value) {
  const [step, ...rest] = steps;
  if (rest.length === 0) {
    if (value !== undefined) node[step] = value;
    else if (Array.isArray(node)) node.splice(step, 1);
    else delete node[step];
    return;
  }
  const next = node[step];
  const usable = next !== null && typeof next === 'object';
  if (!usable) {
    if (value === undefined) return;
    node[step] = typeof rest[0] === 'number' ? [] : {};
  }
  put(node[step], rest, value);
  const empty = Array.isArray(node[step]) ? node[step].length === 0 : Object.keys(node[step]).length === 0;
  if (value === undefined && empty && !Array.isArray(node)) delete node[step];
}
