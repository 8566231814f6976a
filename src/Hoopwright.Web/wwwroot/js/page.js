// Small things that only the page itself can do.
export function save(blob, fileName) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

export const saveText = (text, fileName, type) => save(new Blob([text], { type }), fileName);

export function remember(name, value) {
  try { localStorage.setItem('hoopwright.' + name, value); } catch { /* a browser that keeps nothing still works */ }
}

export function recall(name) {
  try { return localStorage.getItem('hoopwright.' + name); } catch { return null; }
}

export function theme(name) {
  if (name) document.documentElement.dataset.theme = name;
  else delete document.documentElement.dataset.theme;
}

export const language = code => { document.documentElement.lang = code; };

export const print = () => window.print();

// Marks what a focused field changes: every group of the drawing whose layer is named.
export function highlight(host, layers) {
  if (!host) return;
  for (const group of host.querySelectorAll('[data-layer]')) group.classList.toggle('lit', layers.includes(group.dataset.layer));
}

// Tells the page which layer of a drawing was touched.
export function watchLayers(host, page) {
  host.addEventListener('click', event => {
    const group = event.target.closest?.('[data-layer]');
    if (group) page.invokeMethodAsync('LayerTouched', group.dataset.layer);
  });
}

// Puts the keyboard on the field of a path, and brings it into sight.
export function focusField(path) {
  const field = document.querySelector(`[data-path="${CSS.escape(path)}"] input, [data-path="${CSS.escape(path)}"] select, [data-path="${CSS.escape(path)}"] textarea`);
  if (!field) return false;
  for (let box = field.closest('details'); box; box = box.parentElement?.closest('details')) box.open = true;
  field.focus({ preventScroll: true });
  field.scrollIntoView({ block: 'center', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  return true;
}

// Plan files that are dropped anywhere on the page.
export function watchDrops(page) {
  const hasFiles = event => [...(event.dataTransfer?.types ?? [])].includes('Files');
  document.addEventListener('dragover', event => { if (hasFiles(event)) event.preventDefault(); });
  document.addEventListener('drop', async event => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    for (const file of event.dataTransfer.files) await page.invokeMethodAsync('FileDropped', file.name, await file.text());
  });
}

export function watchNetwork(page) {
  const tell = () => page.invokeMethodAsync('NetworkChanged', navigator.onLine);
  addEventListener('online', tell);
  addEventListener('offline', tell);
  return navigator.onLine;
}
